import type { PlainQuestion } from './plain-question.ts';

/** How somebody asks whether what they say is so. */
const so = 'right|yeah|yes|yep|correct|true|aye|isnt_it|arent_they|doesnt_it|is_that_so';
/** A statement that asks for its yes or no: no question word, no "my". */
const only =
  '-what -why -which -my -mine -should -can -will -how_do -how_long -how_many -when_do -when_should';

const stated = (
  name: string,
  spot: string,
  says: string,
  lines: readonly string[] = [],
  next: readonly string[] = [],
): PlainQuestion => ({
  name,
  spots: [`${so} ${only} ${spot}`],
  hasAnyFigures: true,
  isBeforeSums: true,
  says,
  lines,
  next,
});

/** What people say of a word and want confirmed: yes or no first, then what it is. */
export const statementQuestions: readonly PlainQuestion[] = [
  {
    name: 'only-half-usable',
    spots: [
      'only_half|only_ever_half|just_half|half_of|half_out|half_the usable|use|used|get|gets|available|good_for batter*|agm|leisure|bank|capacity|label|amp_hours -lithium -panel* -charge -charged -hours -full -days -fridge',
    ],
    isBeforeSums: true,
    says: 'By its kind: lead-acid and AGM give about half of their Ah, lithium 80 to 90 %.',
    lines: ['Emptied day by day lead-acid wears out early; lithium’s BMS cuts off at the very end.'],
    next: ['AGM or lithium?'],
  },
  stated(
    'said-dod-is-left',
    'dod|depth_of_discharge left|remaining|full|charged -soc -state_of_charge',
    'No: depth of discharge (DoD) is what is gone. What is left is the state of charge (SoC).',
    ['The two add up to 100 %: 80 % DoD leaves 20 %.'],
  ),
  stated(
    'said-dod-is-gone',
    'dod|depth_of_discharge used|gone|taken|empty|drained|deep -soc -state_of_charge',
    'Yes: depth of discharge (DoD) is the share that you have taken out.',
    ['What is left is the state of charge: the two add up to 100 %.'],
  ),
  stated(
    'said-soc-is-full',
    'soc|state_of_charge full|left|charged|remaining -dod -depth_of_discharge',
    'Yes: state of charge (SoC) is how full it is. Depth of discharge (DoD) is the rest, what is gone.',
  ),
  stated(
    'said-soc-is-gone',
    'soc|state_of_charge used|gone|taken|drained -dod -depth_of_discharge',
    'No: state of charge (SoC) is what is left. What is gone is the depth of discharge (DoD).',
  ),
  stated(
    'said-amp-hour',
    'amp_hour|amp_hours|ah one|an_hour|for|times -last* -batter* -fridge -panel* -inverter',
    'Yes: an amp hour is one amp for one hour, or half an amp for two.',
    ['Amps times hours is what a thing takes out: 4 A for 5 hours is 20 Ah.'],
    ['what is 60W in amps?'],
  ),
  stated(
    'said-watt',
    'watt|watts|power volts_times|amps_times|volts_x|amps_x|multiplied|times -fridge -panel* -inverter -batter*',
    'Yes: watts are amps times volts. 5 A at 12 V is 60 W.',
    ['Times hours it is watt hours: 60 W for 3 hours is 180 Wh, 15 Ah at 12 V.'],
  ),
  stated(
    'said-float-first',
    'float before|first|then bulk|absorption|absorb',
    'No: bulk comes first, then absorption, and float last, once it is full.',
    [],
    ['what is float?'],
  ),
  stated(
    'said-stages-in-order',
    'bulk|float absorption|absorb|absorbtion after|then|next|follows|second|last -before',
    'Yes: bulk first, then absorption, then float.',
    ['Bulk brings the volts up, absorption holds them while the amps fall, float keeps it full.'],
    ['what is absorption?'],
  ),
  stated(
    'said-float-is-full',
    'float|floating full|fully|charged|done|finished|topped -never -bulk -absorption',
    'Yes: in float it is full, or was taken for full, and is only kept there at about 13.5 V.',
    [],
    ['what is float?'],
  ),
  stated(
    'said-bulk-is-fast',
    'bulk fast|main|most|first|all_the_amps|full_amps|full_current|flat_out -float',
    'Yes: bulk is the first stage, all the amps there are until the volts are up.',
    [],
    ['what is absorption?'],
  ),
  stated(
    'said-mppt',
    'mppt extra|spare|surplus|higher|more|turns|converts|changes volts|voltage|amps -pwm -batter*',
    'Yes: an MPPT controller turns the panel’s spare volts into amps, about a fifth more than a PWM.',
  ),
  stated(
    'said-bms',
    'bms protects|protect|protecting|cuts|guards|saves|looks_after|safety -bypass -without',
    'Yes: a BMS cuts a lithium battery off before its cells are hurt.',
    ['Too full, too empty, too hot, too cold or too many amps: never bypass it.'],
  ),
  stated(
    'said-voc',
    'voc|open_circuit nothing|unplugged|disconnected|no_load|without|most|max*',
    'Yes: Voc is a panel’s volts with nothing connected, the most it can reach; cold raises it.',
  ),
  stated(
    'said-isc',
    'isc|short_circuit most|max*|shorted|short',
    'Yes: Isc is a panel’s amps when shorted in full sun, the most it gives.',
  ),
  stated(
    'said-agm-is-lead',
    'agm|gel lead|lead_acid kind|type|sort|a|is|still -lithium -charg* -long* -batteries_last',
    'Yes: AGM and gel are lead-acid too, sealed, and used to about half like any of them.',
  ),
];
