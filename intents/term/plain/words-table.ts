import { amountsOf } from '../../figures-told.ts';
import type { PlainQuestion } from './plain-question.ts';

/** What stands on labels and displays, and what is asked of gear that lies idle: only where nothing else is read. Common practice. */
export const wordQuestions: readonly PlainQuestion[] = [
  {
    name: 'fifteen-amp-plug',
    spots: [
      'plug|plugs|lead|leads|cord|cords|inlet|outlet|powerpoint|socket|sockets what|whats|why|difference|business|deal|mean|means|about|fit|fits -fuse -fridge -dcdc -twelve -usb -ciggy -cig* -melt* -hot -warm',
    ],
    when: mentions => amountsOf(mentions, 'current').some(({ value }) => value === 15),
    hasAnyFigures: true,
    isBeforeSums: true,
    says: 'In Australia and New Zealand it is the vans’ mains plug: its earth pin is wider than a 10 A one’s.',
    lines: [
      'A 10 A plug fits a 15 A socket, but not the other way round: never file the pin, and no home-made lead.',
      'The blue 16 A plug of Europe doesn’t fit there: use the van’s own lead, or an adaptor sold for it.',
    ],
    caution: 'mains-wiring',
  },
  {
    name: 'lvd',
    spots: ['lvd|lvc|low_voltage_disconnect what|whats|mean*|stand*|dark|display'],
    says: 'LVD or LVC is the low-voltage cut-off: the battery is low, so it switches the loads off.',
    lines: ['Charge it, and they come back at about 12.6 V. It guards the battery from being run flat.'],
  },
  {
    name: 'bypass-diodes',
    spots: ['bypass_diode|bypass_diodes'],
    says: 'Bypass diodes let current go round a shaded part of a panel, so that the rest still works.',
    lines: ['They sit in the box on its back, as a rule one for each third of it.'],
  },
  {
    name: 'vented-label',
    spots: ['vented mean|means|meaning|mean_on label|battery|word'],
    says: 'Vented means a wet battery that gives off gas: it needs a box with a vent to the outside.',
    lines: ['It stays upright and wants distilled water now and then.'],
    caution: 'battery-gas',
  },
  {
    name: 'tail-current',
    spots: ['tail_current set|number|what_is|whats -still -gives'],
    hasAnyFigures: true,
    says: 'Set tail current to about 2 to 4 % of the Ah, 2 to 4 A on 100 Ah: below it counts as full.',
    lines: ['And the charged voltage just under what the charger holds, such as 14.0 to 14.2 V.'],
  },
  {
    name: 'chargers-stages',
    spots: ['stage stages|more_stages better|more|worth|need'],
    hasAnyFigures: true,
    says: 'Three stages do: bulk, absorption, float. The others are mostly tests and repair steps.',
    lines: ['What counts is that its type fits the battery. Repair steps must be off for lithium.'],
  },
  {
    name: 'amps-times-volts',
    spots: ['amps_times_volts|volts_times_amps'],
    says: 'Yes: watts are amps times volts. 5 A at 12 V is 60 W.',
    lines: ['Times hours it is watt hours: 60 W for 3 hours is 180 Wh, 15 Ah at 12 V.'],
  },
  {
    name: 'volts-up-with-load-off',
    spots: ['voltage|volts went_up|goes_up|rose|jumped_up turned|switched|off'],
    says: 'Normal: a load pulls the volts down, and they come back once it is off.',
    lines: ['For how full it is, read it with all off for an hour or more.'],
  },
  {
    name: 'lithium-by-volts',
    spots: ['why|cant|how_come tell|know|read lithium|lifepo* by_volts|by_voltage|with_volts'],
    says: 'Because its volts stay flat: some 13.3 to 13.0 V from nine tenths to a third full.',
    lines: ['A shunt that counts amp hours tells it, set to 100 % each time it is full.'],
  },
  {
    name: 'walking-on-panels',
    spots: ['walk_on|walking_on|step_on|stand_on panel|panels|it -van -we'],
    says: 'Don’t walk on a panel: its cells crack unseen, and lose power or get hot later.',
    lines: ['Glass one on a frame or glued flexible one alike. Step beside it.'],
  },
  {
    name: 'welding',
    spots: ['weld|welding trailer|chassis|disconnect*|unplug* -cable -cables -fuse -inverter'],
    says: 'Yes: both leads off the battery, minus first, and unplug controller, inverter and panels.',
    lines: ['Welding current finds its way through electronics. Clamp its earth close to the weld.'],
  },
];
