import type { Aside } from '../asides.ts';

/** Handling panels: plugs, order, shade, sun on the roof, mixed ones. Common practice. */
export const handlingAsides: readonly Aside[] = [
  {
    name: 'series-doubles-volts',
    hasAnyFigures: true,
    spots: ['series double*|twice|more amps|amp|current -parallel'],
    verdict: 'no',
    says: 'No: series adds the volts, the amps stay those of one. Parallel adds the amps.',
    lines: ['The watts are the same either way. An MPPT turns the extra volts into amps; a PWM wastes them.'],
  },
  {
    name: 'parallel-adds-amps',
    hasAnyFigures: true,
    spots: ['parallel|side_by_side double*|twice|more amps|amp|current -series'],
    verdict: 'yes',
    says: 'Yes: in parallel the amps add up and the volts stay those of one panel.',
    lines: ['The controller must be rated for the sum. From three panels on each string wants its own fuse.'],
  },
  {
    name: 'order-of-plugs',
    spots: [
      'before|after|first|order panel*|solar batter* plug*|connect*|hook* -disconnect* -series -parallel -fuse',
    ],
    says: 'Battery to the controller first, then the panel. Take them off the other way round.',
    lines: ['Without a battery on it, some controllers are killed by the panel’s volts.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'off-first',
    spots: ['which|what disconnect*|unplug*|take_off first'],
    says: 'Panel off first, then the battery; back on the other way round.',
    lines: ['With no battery on it, the panel’s volts can kill the controller.'],
  },
  {
    name: 'diode-between',
    spots: ['diode* -what_do -what_is -whats'],
    says: 'Mostly not: the controller stops the flow at night, and panels carry bypass diodes in the box.',
    lines: ['Two in parallel need none; three or more strings want a fuse each. A diode costs half a volt.'],
  },
  {
    name: 'makes-of-plugs',
    spots: [
      'mc connector*|plug* makes|brands|different|fit|together|mix*',
      'connectors|connector different_make*|different_brand*|two_makes',
    ],
    verdict: 'no',
    says: 'Better not: plugs of different makes fit but may not touch well, get hot and burn.',
    lines: ['Put the same make on both ends, crimped with its own tool. Never pull them apart under load.'],
  },
  {
    name: 'froze-together',
    spots: ['connector*|plug* froze*|frozen|stuck'],
    says: 'Cover the panel, warm them with your hands or lukewarm water, and squeeze both clips.',
    lines: ['No knife and no flame. A spanner made for these plugs costs little.'],
  },
  {
    name: 'on-the-roof-in-sun',
    spots: [
      'daylight|in_the_sun|under_sun|sun|sunny work|cover|shock|dangerous|disconnect* -enough -how_much -controller',
    ],
    says: 'Cover them first: in light a panel is live. One 12 V panel won’t shock you, but it can arc.',
    lines: [
      'Pulled apart under load a plug draws an arc: switch off or cover, then unplug.',
      'Panels in series pass 60 V soon: that can shock, and is a job for a licensed electrician in some places.',
    ],
  },
  {
    name: 'one-in-shade',
    hasAnyFigures: true,
    spots: ['one|panel|under shade|tree|gum_tree|shaded kill*|other|whole_lot|drops|both|nothing -which -or'],
    says: 'In series, nearly: one in shade holds the whole string back. In parallel only its own share goes.',
    lines: ['So wire them in parallel where shade falls on one, if your controller’s amps allow it.'],
  },
  {
    name: 'unlike-panels',
    hasAnyFigures: true,
    spots: [
      'different|unlike|mix|mixed|mixing sizes|size|make|makes|panels|blanket|watts|brand -volts_differ',
    ],
    says: 'Yes, in parallel if their volts are within about 2 V; in series the weaker one holds back all.',
    lines: ['Compare Vmp on the labels. Unlike volts: a controller each, both to the battery.'],
  },
  {
    name: 'one-more-later',
    spots: ['add|more second|another|later|extra panel|one -controller_size -series -parallel'],
    verdict: 'yes',
    says: 'Yes, in parallel, if its volts are like the first one’s and the controller’s amps allow it.',
    lines: ['Watts of both, divided by 12, are the amps it must carry: 200 W wants a 20 A one.'],
    next: ['what controller for a 200W panel?'],
  },
  {
    name: 'panel-of-twenty-four',
    hasAnyFigures: true,
    spots: ['panel|solar into|on|with|typo v|volts|volt battery -series -parallel -controller -regulator'],
    when: ({ solar }) => !solar?.length,
    says: 'No typo: an MPPT controller brings a panel’s higher volts down to 12 V, and gives more amps.',
    lines: ['Its volts limit must be above the panel’s Voc with a tenth to spare. A PWM would waste half.'],
  },
  {
    name: 'used-while-charging',
    spots: ['while|and|same_time running|run|use fridge|lights|load* charge|panel -straight -without'],
    verdict: 'yes',
    says: 'Yes: the fridge takes its share of what the panel makes, and the battery gets the rest.',
    lines: ['By day that is easiest on the battery.'],
  },
  {
    name: 'controller-unsized',
    spots: [
      'what|which|whats|size controller|regulator -first -lithium -mppt -pwm -straight -without -no -happens',
    ],
    when: ({ solar }) => !solar?.length,
    says: 'Watts of panel divided by 12 are its amps, and go one size up: 250 W wants a 30 A one.',
    lines: ['Its volts limit must be above the panels’ Voc in the cold, a tenth over the label.'],
  },
];
