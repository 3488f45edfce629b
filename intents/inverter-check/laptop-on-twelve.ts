import type { Mention } from '#language/recognise/mention.ts';
import { plain, significant } from '#quantity/round.ts';
import type { Aside } from '../asides.ts';
import { amountsOf } from '../figures-told.ts';

/** A laptop's own charger, W, where nobody says; what a 12 V adapter loses; what a lighter socket carries, W. Common practice. */
const usual = { chargerW: 65, efficiency: 0.9, socketW: 110 } as const;

const wattsIn = (mentions: readonly Mention[]): number | undefined => amountsOf(mentions, 'power')[0]?.value;

function headline(mentions: readonly Mention[]): string {
  const watts = wattsIn(mentions);
  const adapter = 'a 12 V USB-C (PD) adapter of';
  return watts === undefined
    ? `No inverter needed: ${adapter} its charger’s watts (often ${usual.chargerW} W) in a 12 V socket.`
    : `No inverter needed: ${adapter} ${significant(watts)} W or more in a 12 V socket.`;
}

function lines(mentions: readonly Mention[]): readonly string[] {
  const watts = wattsIn(mentions) ?? usual.chargerW;
  return [
    `It takes about ${plain(watts / usual.efficiency / 12)} A while it charges. Not straight onto 12 V: a laptop wants some 20 V, which the adapter makes.`,
    'One with a round plug takes a 12 V car charger of its own volts and watts, as on the label of its brick.',
    ...(watts > usual.socketW
      ? ['That is more than a lighter socket carries for long: a fused lead straight from the battery.']
      : []),
  ];
}

/** A laptop on 12 V with no inverter: what it needs instead. Common practice; USB power delivery gives up to 100 W or more. */
export const laptopOnTwelve: readonly Aside[] = [
  {
    name: 'laptop-on-twelve',
    hasAnyFigures: true,
    isAsked: 'for-sure',
    spots: [
      'laptop|laptops|macbook|notebook|chromebook|ultrabook without_an_inverter|without_inverter|without_the_inverter|without_a_inverter|no_inverter|havent_got_an_inverter|dont_have_an_inverter|havent_an_inverter|not_using_the_inverter|skip_the_inverter|need_an_inverter|need_a_inverter|need_inverter|avoid_the_inverter|instead_of_an_inverter|bypass_the_inverter -size -how_long -how_many_hours -fridge -kettle -microwave -telly -cpap',
    ],
    says: (_, mentions) => headline(mentions),
    lines: (_, mentions) => lines(mentions),
    next: ['what size inverter for a laptop?'],
  },
];
