import type { Mention } from '#language/recognise/mention.ts';
import { plain } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';
import { amountsOf } from '../figures-told.ts';

/** A usual laptop at work, W, and what a 12 V adapter makes of its battery's power. Makers' sheets that agree. */
const laptop = { usualW: 60, share: 0.9, drawnV: 12 } as const;

/** What it takes by each way, at the watts told. */
function laptopTakes(_: Facts, mentions: readonly Mention[]): readonly string[] {
  const watts = amountsOf(mentions, 'power')[0]?.value ?? laptop.usualW;
  const amps = watts / laptop.share / laptop.drawnV;
  return [
    `At ${plain(watts)} W it takes about ${plain(amps)} A by an adapter, ${plain(amps / laptop.share)} A and more by an inverter. Its socket’s fuse must carry that.`,
    'The adapter must give the laptop’s own volts (19 to 20 V as a rule) and watts; by USB-C, its full watts.',
  ];
}

const isSized = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ capacityAh, energyWh }) => (capacityAh ?? energyWh) !== undefined);

/** Two things told by their names alone, of which no figure is needed to choose. Common practice. */
export const namedAsides: readonly Aside[] = [
  {
    name: 'laptop-by-inverter',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    spots: [
      'laptop|macbook|notebook|laptops inverter or|better|straight|instead|rather|vs|told|best|which v|volt|volts|twelve|adapter|adaptor|car_charger|usb_c|usbc|usb|cig*|dc_charger|socket -what_size -how_big -how_long -how_many -how_much',
    ],
    says: 'By a 12 V adapter: it spares the inverter’s loss of 10 to 15 %, and what that takes just being on.',
    lines: laptopTakes,
  },
  {
    name: 'one-big-or-two',
    isAsked: 'for-sure',
    hasAnyFigures: true,
    when: facts => !isSized(facts),
    spots: [
      'batter* one|single big|large|bigger|larger two|pair|couple small|smaller|little|or -panel* -lithium -how_much -how_long -charg* -fridge -start* -second',
      'one_big_one|one_big_battery|one_large_battery|one_bigger_one two|pair|couple -panel*',
    ],
    says: 'Much the same for the same Ah in all: one big one is simpler, two lift and fit more easily.',
    lines: [
      'Two must be alike in kind, size and age, on thick equal cables. Should one fail, the other alone may do.',
      'One has fewer cables and joints; 100 Ah weighs about 30 kg in AGM, about 12 kg in lithium.',
    ],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'fridge-by-inverter',
    hasAnyFigures: true,
    spots: [
      'fridge inverter|inv v|twelve|which|or|uses|run -size -big -trips -start* -beep*',
      'fridge|cpap twelve|v two_forty|mains|inverter uses|which|matter -way -gas -battery',
    ],
    says: 'Straight from 12 V: through an inverter it takes 15 to 25 % more, for the same cold.',
    lines: [
      'An inverter loses 10 to 15 %, and 5 to 15 W just being on, night and day.',
      'On a powered site its mains lead spares the battery.',
    ],
  },
  {
    name: 'kettle-on-the-stove',
    spots: ['kettle|hot_water|boil stove|gas|hob|burner|butane -trip*'],
    says: 'On the stove: a 12 V kettle takes 10 to 14 A for half an hour, about 6 Ah for half a litre.',
    lines: ['A 1000 W one on an inverter takes some 90 A, 5 Ah in four minutes. Gas wants open air.'],
  },
  {
    name: 'lamps-old-and-new',
    spots: ['led globe|bulb|incandescent|halogen|filament|old_lamp* -flicker* -dim*'],
    says: 'LED: about a tenth of an old globe’s power for the same light, 1 to 5 W in place of 10 to 20.',
    lines: ['Four old 10 W globes for five hours are 17 Ah, LEDs of the same light about 2.'],
  },
  {
    name: 'plug-for-a-van',
    spots: ['pin anderson|two_pole|grey_plug|gray_plug -how_many'],
    says: 'The heavy two-pole plug, on thick cable: a trailer plug’s pin carries 10 to 15 A at most.',
    lines: ['Use 6 mm² or more for a fridge, 16 mm² for charging, with a fuse at the battery.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'socket-or-plug',
    spots: ['anderson ciggy|cig*|lighter|dash fridge|or|which|better'],
    says: 'The heavy two-pole plug: it can’t shake loose, and stays cool. A lighter plug is for 8 A at most.',
    lines: ['On a fused cable of its own, 4 to 6 mm² as a rule.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'clamp-or-shunt',
    spots: ['clamp|clamp_meter|multimeter shunt|monitor better|or|whats|which'],
    says: 'A shunt to know what is left; a clamp meter to find what draws, one wire after the other.',
    lines: ['A clamp meter must be made for DC: many only read AC.'],
  },
  {
    name: 'thin-panel',
    spots: ['bendy|flexible|flexi|thin|soft glass|framed|hard|rigid|normal panel|as_much|make*|good -cable'],
    says: 'Nearly: flat and hot on a roof it makes about a tenth less, and it lasts 3 to 8 years, not 20.',
    lines: ['Glass on a frame with air under it stays cooler. The thin one suits curves and awnings.'],
  },
  {
    name: 'warmed-or-wrapped',
    spots: ['heating|heated|self_heat* insulat*|wrap*|normal lithium|lifepo*|one'],
    says: 'Insulate or keep it in the cabin, unless you must charge at dawn in frost often.',
    lines: [
      'Insulation only slows the cold: after two frosty nights it’s as cold as the air. Heating takes about 50 W.',
    ],
    cautions: ['lithium-cold'],
  },
  {
    name: 'heaters-two-sizes',
    spots: ['kw kw heater|diesel', 'kw heater|diesel same|draws|draw|bigger|smaller -electric -panel'],
    says: 'Nearly the same: 8 to 12 A at the start, then 1 to 2 A on low and 3 to 4 A on full.',
    lines: ['The bigger one on low soots up in a small van: take the size that runs at half or more.'],
  },
  {
    name: 'colder-or-opened',
    spots: ['lid|door|opening degrees|colder|setting uses|more|which|worse'],
    says: 'Colder takes more: some 4 % for each degree, all day. A short look costs next to nothing.',
    lines: [
      'Warm drinks cost most: 6 kg of them take about as much as half a day. Rule of thumb, fridges differ.',
    ],
  },
  {
    name: 'controller-nearer',
    spots: ['move|extend|longer|nearer regulator|controller|leads|lead -fuse'],
    says: 'Controller close to the battery, the long leads on the panel’s side: there volts matter less.',
    lines: [
      '6 mm² for 10 A over 8 m is a fair start. A controller out by the panel reads the battery wrong.',
    ],
    next: ['what cable for 10A over 8 m?'],
  },
  {
    name: 'compressor-or-absorption',
    hasAnyFigures: true,
    spots: ['absorption|three_way compressor which|or|vs|better -charger -bulk'],
    says: 'Off a battery, the 12 V compressor sort: a three-way on 12 V takes six times as much.',
    lines: ['A three-way is for gas or mains, standing level; on 12 V only while you drive.'],
  },
  {
    name: 'bigger-battery-or-smaller-thing',
    spots: ['bigger_battery|more_battery or smaller|less|other machine|thing|one|inverter|kettle'],
    says: 'The smaller thing: it costs less than battery, inverter and cable that carry the big one.',
    lines: ['A BMS’s limit is in amps: two alike batteries in parallel share them, where theirs allow that.'],
  },
  {
    name: 'ice-bought',
    spots: ['ice cheaper|instead|just_buy|buying -maker -how_long'],
    says: 'For a few nights ice is cheaper; from some 20 days a year on the fridge pays.',
    lines: ['Heat melts about a bag a day. I keep no prices, so reckon with yours.'],
  },
];
