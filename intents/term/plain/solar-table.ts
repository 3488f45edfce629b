import type { PlainQuestion } from './plain-question.ts';

/** Solar and charging in the field: what goes first, what is worth it, what a plug or an idling engine gives. */
export const solarQuestions: readonly PlainQuestion[] = [
  {
    name: 'connect-order',
    isBeforeSums: true,
    spots: [
      'order|which_first|what_first|sequence connect|plug|wire|hook panel|panels|solar|controller|regulator -series -buy -list',
      'connect|hook panel|panels|solar first battery|controller|regulator -how_long',
    ],
    says: 'Battery to the controller first, then the panel. Take them off the other way round.',
    lines: [
      'Keep the panel covered or face down while you join it. With no battery on it, some controllers die.',
      'A fuse at the battery, and loads last.',
    ],
    next: ['what controller for a 200W panel?'],
  },
  {
    name: 'mppt-worth-it',
    spots: [
      'mppt pwm or|better|worth -volt* -series -parallel -diff* -mean* -much -how_many',
      'mppt worth|should_i -series -parallel -much -how_many',
    ],
    says: 'PWM for one small 12 V panel, MPPT from about 150 W on or for house panels.',
    lines: [
      'From a 12 V panel an MPPT brings some 10 to 20 % more, most in the cold; from a house panel about twice.',
      'A PWM needs a panel for 12 V; an MPPT turns spare volts into amps.',
    ],
    next: ['what is an MPPT controller?', 'what controller for a 200W panel?'],
  },
  {
    name: 'trailer-plug-amps',
    hasAnyFigures: true,
    spots: [
      'seven_pin|pin_trailer_plug|pin_trailer_socket charg*|fill* -gauge -draw* -fuse -wire -dcdc -dc -doesnt',
      'how_many|what amps|amp|current the_pin|seven_pin|pin_plug give|gives|through -earth -light* -dcdc',
    ],
    says: 'A 7-pin gives 5 to 10 A at best through its thin wire: it tops up slowly, rarely fills one.',
    lines: [
      'Its volts sag on the way, so often nothing goes in at all.',
      'For more, 16 mm² on a heavy two-pole plug of its own, fused at both ends, to a DC-DC charger in the van.',
    ],
    caution: 'fuse-at-battery',
    next: ['what cable for a 25A dcdc, 6 m?'],
  },
  {
    name: 'house-panel',
    spots: [
      'house|rooftop|residential|domestic solar_panel|solar_panels|panel|panels van|caravan|camper|battery -house_battery -house_batteries -house_bank',
    ],
    says: 'Yes, with an MPPT controller for its volts: house panels give 30 to 50 V open.',
    lines: ['A PWM would waste half of it. They are glass, 1.7 × 1 m and 20 kg: fix it well.'],
    caution: 'fuse-at-battery',
    next: ['what controller for a 400W panel?'],
  },
  {
    name: 'panel-cleaning',
    spots: [
      'how|should|need|often|what clean|cleaning|wash|washing panel|panels|solar -how_much -how_many -off -snow -normally',
    ],
    says: 'Water and a soft cloth when they look dusty: dirt costs some 5 to 20 %, bird mess more.',
    lines: ['In the cool of the morning, no pressure washer and nothing that scratches.'],
  },
];
