import { decimals } from '#quantity/round.ts';
import type { Facts } from '#rig/rig.ts';
import type { Aside } from '../asides.ts';

const isLithium = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ chemistry }) => chemistry === 'lfp');
const hasPercent = ({ batteries = [] }: Facts): boolean =>
  batteries.some(({ stateOfChargePercent }) => stateOfChargePercent !== undefined);

/** What came out in a test from full: Ah, and the label's, where a load, its hours and the label are told. */
function measured({ batteries = [], loads = [], durationH }: Facts) {
  const load = loads.find(({ currentA, powerW }) => (currentA ?? powerW) !== undefined);
  const amps = load?.currentA ?? (load?.powerW === undefined ? undefined : load.powerW / 12.5);
  const label = batteries.find(({ capacityAh }) => capacityAh !== undefined)?.capacityAh;
  return amps === undefined || durationH === undefined || label === undefined
    ? undefined
    : { usedAh: amps * durationH, labelAh: label };
}
/** From so much of the label on, down to half, a battery is sound. Common practice. */
const soundShare = 0.45;

/** How to find out, and is it done for: tests that anybody can make, and what they say. Common practice. */
export const checkAsides: readonly Aside[] = [
  {
    name: 'test-read',
    hasAnyFigures: true,
    spots: ['test|from_full|stuffed|dead|gives_only|only|it_was|lasted|hit|did_the'],
    when: (facts, { facts: told }) =>
      told.durationH !== undefined && measured(facts) !== undefined && !isLithium(facts),
    says: facts => {
      const { usedAh = 0, labelAh = 1 } = measured(facts) ?? {};
      return `That is about ${decimals(usedAh, 0)} Ah out of ${decimals(labelAh, 0)} Ah: ${usedAh / labelAh >= soundShare ? 'sound, if you stopped at about half' : 'worn, if it began full'}.`;
    },
    lines: ['A sound lead battery gives about half its label down to 12.2 V at rest, 11.8 V with 5 A on it.'],
  },
  {
    name: 'is-it-done-for',
    spots: [
      'did_i|have_i|i_have|ive wreck*|kill*|ruin*|damage*|cook* -why -fuse -lead -leads -panel -controller -tap -backwards',
      'damage_done|any_damage|is_it_wrecked|is_it_ruined|have_killed_it',
    ],
    when: facts => !isLithium(facts) && facts.ambientC === undefined,
    says: ({ volts, voltsTaken }) =>
      volts !== undefined && volts < (voltsTaken === 'load' ? 8 : 10.5)
        ? `Perhaps: at ${decimals(volts, 1)} V a cell may be dead. Charge it slowly, today, in the open air.`
        : 'Once, mostly not: charge it right up today. What kills lead-acid is standing low for days.',
    lines: [
      'Full and after a night’s rest it should read 12.6 V or more; 12.4 V or less, and part of it is gone.',
      'Lithium’s BMS cuts off in time: charge it within days, and it is fine.',
    ],
  },
  {
    name: 'killing-them',
    spots: ['killed|kill|kills|ruined|through agms|batteries|agm why|always|every_year'],
    says: 'Running them till the fridge stops is what does it: that is nearly flat. Stop at half, 12.2 V.',
    lines: [
      'Set the fridge’s cut-out to high, and fill the battery right up each day or two. Lithium stands it.',
    ],
    next: ['agm or lithium?'],
  },
  {
    name: 'used-fridge',
    hasAnyFigures: true,
    spots: [
      'fridge|freezer second_hand|secondhand|nd_hand|used|buying|before_i_buy check|look|measure|test|worth -amp*_used -battery -deep_cycle -drops',
    ],
    says: 'Run it on 12 V: cold within an hour, 3 to 5 A while it runs, and off by itself when cold.',
    lines: [
      'Then look at seal, plug (brown is bad) and fan, and that it starts again at once on its low setting.',
    ],
  },
  {
    name: 'used-heater',
    spots: ['heater second_hand|secondhand|nd_hand|used|buying|off_a_mate'],
    says: 'Start it: 8 to 12 A for some minutes, then 1 to 3 A, no smoke after that and no code.',
    lines: [
      'Give it 4 mm² of short cable. Look for soot, a whole exhaust, and a carbon monoxide alarm where you sleep.',
    ],
  },
  {
    name: 'used-battery',
    hasAnyFigures: true,
    spots: [
      'check|measure|look_for|look_at|test second_hand|secondhand|nd_hand|used|buying|before_paying -panel -fridge -heater',
      'bought second_hand|nd_hand stuffed|dead|good|drops -panel -fridge_is',
    ],
    says: facts =>
      isLithium(facts)
        ? 'Ask for its app: health, cycles, and cells within 0.05 V. Then run a known load from full.'
        : 'Battery: full and rested 12.6 V, then 5 A for hours. Panel: volts and amps in the sun.',
    lines: ['100 Ah of lead should run 5 A for about 10 hours to half, of lithium about 19 hours in all.'],
  },
  {
    name: 'still-holds-it',
    hasAnyFigures: true,
    spots: [
      'how find_out|tell|know|test|see still_holds|holds_what|what_it_says|old_battery|yr_one|old_one|year_old -panel -fuse',
      'old|flat|dead still any_good|good_still|any_good_still|worth_keeping -fridge -panel',
      'battery|battry|batt|agm worth_keeping|about_done|about_it_done|it_about_done',
    ],
    says: 'Charge it full, rest it a night, then run 5 A: 100 Ah should last about 10 hours to half.',
    lines: [
      'Under 12.5 V after that night it is tired already. Half the hours means half the battery.',
      'Flat since last season, it seldom comes back; five years is a fair age for lead.',
    ],
  },
  {
    name: 'less-than-its-label',
    hasAnyFigures: true,
    spots: [
      'bms|app|shows full_capacity|paid_for|bought_as',
      'each_year|every_year|a_year dropping|losing|less|fewer',
    ],
    says: 'New and under 95 % of its label is the dealer’s affair; with age 2 to 5 % a year is normal.',
    lines: [
      'Count it once from full to empty before you complain: a BMS’s own figure may be only a setting.',
    ],
  },
  {
    name: 'weaker-in-the-cold',
    unless: { ambientFromC: 15 },
    spots: [
      'why flat|less|faster|drains|weaker|loses cold|frost|winter|freez* batter*|it -heater -lithium_wont',
    ],
    says: 'Cold slows it: at 0 °C lead gives about a quarter less, lithium a seventh. Warm, it’s back.',
    lines: ['Heaters and long evenings take more as well. Don’t charge lithium below 0 °C.'],
  },
  {
    name: 'dead-cell',
    hasAnyFigures: true,
    spots: ['dead_cell|dud_cell|duff|bad_cell|dud', 'full charge|charged sits|still|after'],
    when: ({ volts = 0, voltsTaken }) => volts > 9.5 && volts < 12.5 && voltsTaken !== 'load',
    says: ({ volts = 0 }) =>
      volts < 11.3
        ? `Most likely a dead cell: ${decimals(volts, 1)} V rested after a full charge is one of six gone.`
        : `No dead cell, that reads about 10.5 V. ${decimals(volts, 1)} V so soon means worn, or never full.`,
    lines: ['A dead cell can’t be mended: take it out of its bank today, as it drags the others down.'],
    cautions: ['battery-gas'],
  },
  {
    name: 'odd-one-out',
    hasAnyFigures: true,
    spots: ['one_reads|one_is|which_one|one other|others|other_two'],
    when: ({ volts, batteries = [] }) => volts !== undefined && batteries.some(({ count = 1 }) => count > 1),
    says: 'The one that reads lower goes: take it out, charge it alone, and read it after a night.',
    lines: [
      'Back under 12.5 V it’s done; about 10.5 V is a dead cell. The others go on without it.',
      'A new one beside old ones soon ages to their state.',
    ],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'no-meter',
    spots: [
      'no_meter|no_multimeter|got_a_meter|have_a_meter|a_multimeter|no_measure* no|have_no|havent|dont -shunt -drain -smart',
    ],
    says: 'Then try it with the engine on: cured, the battery is low. Not cured, it’s the cable or plug.',
    lines: [
      'Feel plug and joints after an hour: warm at one spot is the bad one. Or plug it in right at the battery.',
      'A plain multimeter, set to 20 V DC, settles most faults in a minute.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'cable-or-battery',
    spots: [
      'tell|know|find_out|which which|whether fridge_or|battery_or|which_of|tell_which|out_which -wire_is -colour -fuse',
    ],
    says: 'Measure at the battery and at the thing, both while it runs: over 0.5 V apart is the cable.',
    lines: [
      'Both low together, under 12 V, is the battery. Both fine and it still stops: the thing itself.',
      'No meter? Try it with the engine on, and right at the battery.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'full-but-out',
    hasAnyFigures: true,
    spots: [
      'monitor|shunt|percent|soc|display fridge|freezer|lights|light|heater cut*|died|dead|cuts|went_out|stopped|stops|off|lying -sun -inverter -drop*',
    ],
    when: facts => hasPercent(facts) && facts.volts === undefined,
    says: 'The monitor has most likely lost count: charge right up, then set it to 100 % again.',
    lines: [
      'Is its Ah set to the battery’s own? An old battery holds less: set that.',
      'At the next cut-out read the battery’s volts: over 12.2 V, and it is cable or plug that loses them.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'nought-yet-running',
    hasAnyFigures: true,
    spots: ['still|yet|but goes|runs|going|running|works|on'],
    when: ({ batteries = [] }) =>
      batteries.some(({ stateOfChargePercent = 50 }) => stateOfChargePercent <= 1),
    says: 'The monitor has lost count: it isn’t empty yet. Go by volts till it’s full, then set 100 %.',
    lines: ['With all off for half an hour 12.2 V is half of lead-acid, 13.1 V of lithium.'],
  },
  {
    name: 'shaken-dead',
    spots: ['everything|all|nothing|whole dead|died|works|off pothole|bump|corrugations|rough_road|bumpy'],
    says: 'The main fuse or a lug at the battery, shaken loose: look there first, with all switched off.',
    lines: ['Then the main switch and each fuse. With a lithium, its BMS may have cut out at a loose lug.'],
    cautions: ['fault-finding'],
  },
  {
    name: 'sparks-between-two',
    spots: ['spark* touch*|join*|together them|batteries|reds|two|posts -inverter -charger -disconnect'],
    says: 'Stop: a spark between two batteries means crossed poles or unlike charge. Measure both first.',
    lines: ['Same volts within 0.1 V, plus to plus: then join. Charge each full by itself before.'],
    cautions: ['mixed-batteries'],
  },
  {
    name: 'sparks-on-leaving',
    spots: ['disconnect*|unplug*|take_it_off|pull_it spark*|and_when_i'],
    says: 'Then a load is still on: switch it off first, and take the minus off before the plus.',
    lines: ['Sparks at the posts can set off a battery’s gas, above all after a charge.'],
    cautions: ['battery-gas'],
  },
  {
    name: 'inverter-reads-less',
    hasAnyFigures: true,
    spots: ['inverter low_volt*|says_low|voltage_low|low_battery -when -start* -kettle -microwave'],
    when: ({ volts = 0, voltsTaken }) => volts >= 12.4 && voltsTaken !== 'load',
    says: 'Its own terminals read less: volts go in its cable or a lug. Measure there while it works.',
    lines: [
      'Over 0.5 V less than at the battery: thicker or shorter cable, tight lugs, a sound fuse holder.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'generator-hunts',
    spots: [
      'generator|genny|gen|gennie surge*|hunts|hunting|shuts_off|shuts_down|cuts_out|stops|dies -trip* -inside -headache -charger',
    ],
    says: 'Most often stale fuel or a dirty jet; then the tank’s vent shut, low oil, or a dirty air filter.',
    lines: ['Fresh fuel first, then the carburettor bowl. It stays outside, well away from tents and vans.'],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'volts-on-its-plate',
    spots: ['fridge|tv|pump|it|heater know|tell|whether|if volt|v|volts or -battery -cut* -error -low'],
    says: 'Its plate says: “12/24 V” runs on both, “12 V” only on 12. Look inside the lid or by the lead.',
    lines: ['12 V gear on 24 V burns out; 24 V gear on 12 V won’t start, and takes no harm.'],
  },
];
