import type { Aside } from '../asides.ts';

/** What happened to it, and is it ruined, may it stay so, what now. Common practice. */
export const mishapAsides: readonly Aside[] = [
  {
    name: 'round-the-bms',
    spots: [
      'bms bypass*|wire_around|go_around|get_around|without|take_out|bridge|jump_it|override -cut_out_when -what_is',
    ],
    verdict: 'no',
    says: 'No, never: the BMS is all that stands between a lithium battery and a fire.',
    lines: [
      'It trips for a reason: too many amps, too low, too high or too cold. Find that, or ask its dealer.',
    ],
    cautions: ['bypass-bms'],
  },
  {
    name: 'bms-did-its-job',
    spots: ['bms break|broke|broken|damage*|harm*|hurt did|is|have'],
    says: 'No: its BMS cut out to save it. Loads off, wait a minute, and it comes back or a charger wakes it.',
    lines: ['Off again at the same load? That asks for more amps than the label allows.'],
    cautions: ['bypass-bms'],
  },
  {
    name: 'swapped-for-a-moment',
    spots: [
      'red|positive|plus to_negative|on_negative|to_minus|on_minus|to_black|on_the_black|touched_black -meter -monitor -yeah -leads',
    ],
    says: 'Check the main fuse first, then the fuse inside the charger: both may have saved it.',
    lines: [
      'Both good and it’s still dead? The charger has died: its dealer. Feel the battery: hot or swollen, leave it.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'series-by-mistake',
    spots: ['series accident*|mistake|wrong|oops|instead -panel* -solar -mppt -strings'],
    when: ({ volts, systemVoltageV }) => systemVoltageV !== 24 && (volts === undefined || volts > 16),
    says: 'Take it apart: 25 V kills 12 V gear. The batteries themselves are fine.',
    lines: ['Join plus to plus and minus to minus, then check the fuses and try one thing at a time.'],
    cautions: ['fault-finding'],
  },
  {
    name: 'equalised-by-mistake',
    spots: ['equalis*|equaliz* agm|gel|sealed|lithium|wrecked|ruined|mistake|accident*|wrong|harm*'],
    says: 'One night mostly costs some life, no more: it vents water that can’t be put back. Switch it off.',
    lines: ['Let it rest a day: 12.7 V or more, cool and flat-sided is fine. Hot or swollen: leave it off.'],
    cautions: ['battery-gas'],
  },
  {
    name: 'other-setting',
    spots: [
      'setting|mode|profile lithium|lead|agm|gel|wet matter*|what_if|other_one|wrong_one|mistake|by_accident|wrong_setting -fridge -cut_off -no_setting -no_lithium',
    ],
    says: 'Once does no harm as a rule, but set it right: each kind wants its own volts.',
    lines: [
      'AGM about 14.4 V, gel 14.1 to 14.2 V, lithium 14.2 to 14.6 V, never equalised.',
      'Gel’s setting only fills an AGM a bit less; lead on lithium’s is kept short of its float.',
    ],
  },
  {
    name: 'splashed-outside',
    spots: ['splash*|lid wiped|wiped_it|all_dry|dry_inside|terminals_dry -inverter -socket'],
    verdict: 'yes',
    says: 'Yes, if it’s dry inside: wipe the salt off with fresh water and dry the posts.',
    lines: ['Look again in a week: green or white fur on a joint means that it got in.'],
  },
  {
    name: 'water-in-the-box',
    spots: [
      'water|rain battery_box|in_the_box|in_the_locker|in_the_plug|pin_plug|gets_water|full_of_water -pump -distilled -tap -kettle -top',
    ],
    says: 'Get it out and dry, minus off first: water and copper turn green, and joints fail or heat.',
    lines: [
      'Rinse salt or mud off with clean water, dry it a day, grease the contacts, and give it a drain hole or a new seal.',
      'An inverter or mains gear that stood in it stays off until an electrician has seen it.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'drink-on-it',
    spots: ['spilt|spilled|spill tea|wine|milk|soup|juice|coke|beer|coffee|water|cordial -pump'],
    verdict: 'no',
    says: 'Not yet: off, unplugged and dry for days. What makes mains goes to its maker or an electrician.',
    lines: ['Sugar and milk stay sticky and conduct: drying alone doesn’t get them out.'],
    cautions: ['fault-finding'],
  },
  {
    name: 'chewed-cable',
    spots: [
      'tape|taped chewed|mouse|rat|rats|mice|bare|copper|nick*|cut|eaten|split|worn cable|wire|lead|it -mains -230 -extension -hookup',
      'chewed|eaten cable|wire|wires|lead -mains -extension -hookup -could',
    ],
    verdict: 'no',
    says: 'No, tape is no mend: cut the bad bit out and join it with a crimp and glued heat-shrink.',
    lines: ['Till then pull its fuse. One with all its strands and a fuse may get home, taped and watched.'],
    cautions: ['fuse-at-battery'],
  },
  {
    name: 'tool-across',
    spots: [
      'wrench|spanner|screwdriver|spoon|tool across|terminals|posts|dropped -size -need -welded -get_home -hole',
    ],
    says: 'Perhaps: no crack, heat or swelling, and the posts sound? Then load-test it before you trust it.',
    lines: ['Pits on the posts are filed flat, so that the lugs sit tight. Check its main fuse.'],
    cautions: ['fault-finding'],
  },
  {
    name: 'clean-the-posts',
    spots: [
      'baking_soda|bicarb*|bicarbonate wash|clean*|poles|terminal*|post*',
      'crust|green_stuff|fluffy|furry|fluff|powder|corro* cable|wire|plug|terminal*|post*|lug*|connector|joint|clean -cracked',
    ],
    says: 'That is corrosion: leads off, minus first, then wash it away with baking soda in water.',
    lines: [
      'Goggles and gloves, as it is acid. Rinse, dry, join plus first, tighten, and grease them.',
      'Green that runs on under the cable’s jacket: cut it back, or renew the cable.',
    ],
    cautions: ['battery-gas'],
  },
  {
    name: 'which-fuse-is-it',
    spots: ['which_fuse is|for|feeds|does -blew -blown -size -buy -need -first'],
    says: 'Look at the plan on the fuse box’s lid; else pull one at a time till the thing goes dead.',
    lines: ['Switch it on first, so that you see or hear it. Put each back before the next.'],
  },
  {
    name: 'low-volt-usb',
    spots: ['usb volt*|v reads|read|says|shows|at -inverter -panel* -fridge'],
    says: 'USB is 5 V: under 4.75 V with a phone on it, the socket is poor or its feed is thin.',
    lines: ['Read behind it: 12 V or more there means a worn socket; they are cheap, so swap it.'],
  },
  {
    name: 'usb-drain',
    unless: { ampsFrom: 0.2 },
    spots: ['usb* drain*|kill*|draw*|flat away|parked|week*|store*|off -slow -blow* -fridge -phone'],
    says: 'They can, slowly: one with a lamp or voltmeter takes 0.02 to 0.05 A, 3 to 8 Ah a week.',
    lines: ['A switch before them, or the master switch off when you leave, ends it.'],
  },
  {
    name: 'alarm-chirps',
    spots: [
      'alarm|detector chirp*|once_a_minute|every_minute|every_so_often -four_times -loud -headache -dizzy -sleepy',
    ],
    says: 'One chirp a minute mostly means its own battery; loud and again and again means get out.',
    lines: ['Put in a new one and press test. Over its date, often 7 or 10 years, renew it all.'],
    cautions: ['carbon-monoxide'],
  },
  {
    name: 'twelve-on-24',
    spots: ['can|may|ok|okay plug|connect|run fridge|light*|pump|radio|tv|socket -series -inverter -two'],
    when: ({ systemVoltageV = 12 }) => systemVoltageV > 18,
    says: 'Only if its label says 12/24 V, as most camping fridges do: a plain 12 V thing dies at 24 V.',
    lines: ['For the rest take a 24 to 12 V converter of its amps. Never tap one battery of the two.'],
  },
  {
    name: 'lights-too-many-volts',
    spots: ['volt* too_high|too_much|highest|max* light*|led*|lamp*'],
    says: 'Most 12 V LEDs stand 10 to 15 V: look on the label. Plain car bulbs die early over 14.5 V.',
    lines: ['Cheap strips made for exactly 12 V want a small 12 V regulator before them.'],
  },
  {
    name: 'cells-apart',
    spots: [
      'cell|cells rest|low|lower|diff*|apart|imbalance*|balanc*|fixable|others|bluetooth|app -wet -water -dry -sulph*',
    ],
    says: 'One cell lags: hold it at 14.2 to 14.4 V for some hours, and the BMS may bring it level.',
    lines: [
      'Do that a few days running. Still over 0.1 V apart at full, or it drops first under load: its dealer.',
      'Don’t charge single cells yourself.',
    ],
    cautions: ['bypass-bms'],
  },
  {
    name: 'dcdc-late',
    unless: { hoursFrom: 0.6 },
    spots: [
      'dcdc|dc_dc|b2b|b_b until|after|wait*|takes minutes|while start*|starting|engine|normal|faulty -stops -cuts -nothing -orange',
    ],
    verdict: 'yes',
    says: 'Normal: many wait until the alternator’s volts are up and the starter battery has had its share.',
    lines: ['A quarter of an hour is common on a smart alternator; its ignition wire makes it start sooner.'],
  },
  {
    name: 'lost-on-the-way',
    spots: [
      'at_the_battery|at_battery|battery_says|battery_reads|batterys|at_the_posts|at_the_post fridge|plug|pump|there|inverter|socket|cuts_out -off -later -then -after -rest* -percent* -monitor -charg*',
    ],
    when: (_, { recognised }) => {
      const volts = recognised.mentions.map(({ value }) => value).filter(v => v > 9 && v < 15 && v !== 12);
      return volts.length > 1 && Math.max(...volts) - Math.min(...volts) >= 0.5;
    },
    says: 'That is lost on the way: the cable is too thin or a joint is bad. The battery is fine.',
    lines: [
      'Measure on from the battery, joint by joint, while it runs: the step shows the place. Then thicker cable.',
    ],
    cautions: ['fault-finding'],
  },
  {
    name: 'others-get-more',
    spots: [
      'same fridge|battery|gets|lasts mate|neighbour|neighbor|friend|others|hes|his|theirs why|one|mine',
    ],
    says: 'Most likely yours is worn or never quite full: charge it right up, then run a known load.',
    lines: ['Else it’s the fridge: its setting, its shade, how full, and how often it is opened.'],
  },
];
