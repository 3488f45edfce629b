import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';

const runsNothing = ({ loads, dailyUseAh, dailyUseWh, inverter }: Facts): boolean =>
  !loads?.length && (dailyUseAh ?? dailyUseWh) === undefined && inverter === undefined;
/** A panel that keeps a usual battery full with nothing on, W: twice a weak winter's share of 1–2 W. Common practice. */
const keepsW = 20;

/** What people ask beside what panel they need. */
export const solarSizeAsides: readonly Aside[] = [
  {
    name: 'for-weekends',
    isAsked: 'for-sure',
    spots: [
      'weekend|weekends|two_nights|couple_of_nights|one_night|night_or_two|nights_away need|worth|bother|without|really|pointless|any_point|worthwhile solar|panel|panels -how_big -what_size -how_many -how_much -what_panel -which -inverter -folding -angle',
    ],
    when: facts => runsNothing(facts) && !facts.solar?.some(({ powerW }) => powerW !== undefined),
    hasAnyFigures: true,
    says: 'Mostly not: from a full battery, two nights of lights, phones and a pump need no panel.',
    lines: [
      'A fridge changes that: it takes about 30 Ah a day. A 100 Ah lead battery has about 50 Ah to use, lithium about 80.',
      'Start full: a mains charger at home or a DC-DC charger on the drive fills it between trips.',
    ],
    next: ['fridge, 100Ah, 2 days?'],
  },
  {
    name: 'less-in-the-cold',
    spots: [
      'halve|half_the|fewer|smaller|less|cut_down winter|cold|cooler panel|panels|solar can|could|so|then',
    ],
    hasAnyFigures: true,
    verdict: 'no',
    says: 'No: in winter the sun falls to a half or less, the fridge’s draw only by a quarter or so.',
    lines: ['Winter is what sets the panel’s size. Tilted at the low sun it gains back about a third.'],
    next: ['40Ah a day, what panel in june in melbourne?'],
  },
  {
    name: 'flat-or-tilted',
    spots: ['flat tilt*|tilted|angle*|propped or|better|roof|worth'],
    when: runsNothing,
    hasAnyFigures: true,
    says: 'Flat is fine in summer; in winter tilting at the midday sun brings a third more or better.',
    lines: ['On a roof flat is simplest: half as much panel again makes up for it in winter.'],
  },
  {
    name: 'cheapest',
    spots: [
      'cheapest|cheap|budget|least_money|save_money way|panel|panels|solar|option|what|which -inverter -lithium',
    ],
    when: runsNothing,
    says: 'A framed glass panel is the most watts for the money; blankets and folding ones cost twice as much.',
    lines: ['A second-hand one is fine if it gives near its label. I keep no prices: a shop or two tells.'],
  },
  {
    name: 'second-hand',
    spots: ['second_hand|secondhand|used|old new|panel|panels|buy|worth -day -a_night'],
    says: 'New as a rule: they cost little now. A used one is fine if it gives near its label in the sun.',
    lines: ['Look for cracks, brown spots and lifted corners, and measure its volts and amps about noon.'],
  },
  {
    name: 'too-much',
    spots: ['too_much|too_many|overdo*|oversiz*|over_panel*'],
    verdict: 'no',
    says: 'Hardly: the controller lets in only what the battery takes. Spare panel pays on grey days.',
    lines: [
      'The limits are the controller’s: never its volts in the cold, and its amps as its maker allows.',
      'And the battery’s charging amps: a tenth to a quarter of a lead battery’s Ah, half of lithium’s.',
    ],
  },
  {
    name: 'worst-month',
    spots: ['winter summer size|plan|for|season|which'],
    when: runsNothing,
    says: 'For the worst month you camp in: winter sun is a third to a half of summer’s in the south.',
    lines: ['Only away in summer? Then size for that, and leave the rest to a drive or a mains charger.'],
    next: ['40Ah a day, what panel in june in melbourne?'],
  },
  {
    name: 'kept-full-enough',
    spots: [
      'keep|hold|maintain|topped|stored|storage|stands|parked|unused it|batter*|van|month*|winter|full -going -run* -cold -fridge -camp* -up_with -lights',
    ],
    when: facts => runsNothing(facts) && (facts.solar ?? []).some(({ powerW }) => (powerW ?? 0) >= keepsW),
    verdict: 'yes',
    says: 'Yes, plenty: with nothing on, 10 to 20 W keeps a 100 Ah battery full, even lying flat.',
    lines: ['It needs its controller and a clear view of the sky; snow or a cover stops it.'],
  },
  {
    name: 'kept-full',
    spots: [
      'how_small',
      'keep|hold|maintain|topped|stored|storage|stands|parked|unused it|batter*|van|month*|winter|full -going -run* -cold -fridge -camp* -up_with -lights',
    ],
    when: runsNothing,
    says: 'About 10 to 20 W for a 100 Ah battery with nothing on; 20 to 40 W with an alarm or tracker.',
    lines: [
      'With a controller, even so small. It must see the sky: not under a cover or behind tinted glass.',
    ],
  },
];
