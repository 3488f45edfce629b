import type { HazardAnswer } from './hazard-answer.ts';

/** A figure with a unit: an emergency names none. */
const anyFigure = /\d\s?(?:ah|wh|w|a|v|amps?|watts?|hours?|h|days?)\b/i;
/** A plain yes as the first word. */
const yes = /^(?:yes|yep|sure|fine|it will|tight|just)\b/i;
const noted = /\bnoted\b|\bgot it\b|\bthe rig:/i;
const callNumber =
  'call the emergency number: 000 in Australia, 111 in New Zealand, 999 in Britain, 112 in Europe, 911 in North America.';
const emergencyNumber = `C${callNumber.slice(1)}`;

/** Words for a cable without a fuse, and what more is to be told of it. */
const fuseBeside = (more: string) => ({
  first: 'It needs a fuse at the battery end, however short the wire: else a short burns the cable.',
  instead: `Fit it within a hand’s width of the post, above what the load draws and not above what the cable carries.${more}`,
  defers: 'Follow the maker’s size where it names one, and your local code.',
});

/** What shows that somebody may be poisoned already, or that an alarm went. */
const ofPoisoning = ['symptom', 'alarm', 'sounds', 'silence', 'co', 'detector', 'exhaust', 'detached'];

/** The answers of the dangers, the most urgent first. Sizes of metres and degrees are part of the advice. */
export const hazardAnswers: readonly HazardAnswer[] = [
  {
    code: 'carbon-monoxide',
    first: 'Everybody out into fresh air now: it may be carbon monoxide, and you can’t smell it.',
    instead:
      'Don’t go back in to switch anything off. Headache, dizziness or sleepiness means breathe fresh air and get help.',
    call: emergencyNumber,
    defers:
      'Have the heater and the alarm checked by a licensed gas fitter before anybody sleeps in there again.',
    never: [anyFigure, noted, yes, /\bwhich (?:heater|battery|fridge)\b/i],
    source: 'AS/NZS 5601.2 and makers’ common data for fuel appliances; ABYC A-24 in general terms',
    closer: [
      {
        of: [['planned']],
        not: [...ofPoisoning, 'engine'],
        says: {
          first:
            'No: no stove, gas heater or coals for warmth in a tent, awning or van, open or not: fumes kill.',
          call: `Alight in there now? Everybody out into fresh air. A headache or dizziness: ${callNumber}`,
          instead:
            'Carbon monoxide has no smell, and dying coals give off most. Warm the bed instead: an electric blanket, a hot water bottle, a better bag.',
          defers:
            'Only a heater made for it, its exhaust led outside and fitted by a licensed gas fitter, with an alarm where you sleep.',
        },
      },
      {
        of: [['planned'], ['engine']],
        not: ofPoisoning.filter(one => one !== 'exhaust'),
        says: {
          first:
            'No: no engine left running where anybody sleeps. Its exhaust creeps in, and kills unnoticed.',
          call: `Running now? Everybody out into fresh air. A headache or dizziness: ${callNumber}`,
          instead:
            'Charge by driving, from a panel or at a post; warm the bed with an electric blanket, a hot water bottle, a better bag.',
          defers: 'A carbon monoxide alarm where you sleep, and the exhaust looked at by a mechanic.',
        },
      },
      {
        of: [['coals']],
        not: ofPoisoning,
        says: {
          first: 'Everybody out into fresh air now, the coals too: even dying ones give off carbon monoxide.',
          call: `A headache, dizziness or sleepiness: ${callNumber}`,
          instead:
            'You can’t smell it. Open it right up, and nobody goes back in to sleep until it has aired.',
          defers:
            'Never coals, barbecue or stove for warmth inside; a carbon monoxide alarm where you sleep.',
        },
      },
      {
        of: [['engine', 'generator']],
        not: ['fuel-heater', 'flued-heater', 'heater', 'cooker', 'coals', 'alarm'],
        says: {
          first: 'Everybody out into fresh air now: it may be carbon monoxide, and you can’t smell it.',
          call: emergencyNumber,
          defers: 'No engine runs under, beside or inside where anybody sleeps; have its exhaust looked at.',
          instead:
            'Don’t go back in to switch anything off. Headache, dizziness or sleepiness means breathe fresh air and get help.',
        },
      },
      {
        of: [['cooker']],
        not: ['fuel-heater', 'flued-heater', 'heater', 'alarm'],
        says: {
          first: 'Everybody out into fresh air now: it may be carbon monoxide, and you can’t smell it.',
          call: emergencyNumber,
          instead:
            'Don’t go back in to switch anything off. Headache, dizziness or sleepiness means breathe fresh air and get help.',
          defers:
            'A stove is for cooking in the open or with doors wide open, never for warmth; have an alarm where you sleep.',
        },
      },
    ],
  },
  {
    code: 'battery-fire',
    first: 'Get everybody away from it now, upwind; stop the charging only if you can do it from afar.',
    instead:
      'A battery that smokes, swells, hisses or gets too hot to touch is never charged or used again, and never opened.',
    call: 'Hot, hissing or smoking: call the fire service now. 000 in Australia, 111 in New Zealand, 999 in Britain, 112 in Europe, 911 in North America.',
    defers: 'Once it is cold and outside, ask the maker or a battery recycler how to hand it in.',
    never: [anyFigure, noted, yes, /\btop (?:it )?up with water\b|\bequali[sz]/i],
    source: 'IEC 62619 and makers’ common data; ABYC E-13 in general terms',
  },
  {
    code: 'gas',
    first: 'No spark, flame or switch, not even a light: doors open, bottle off if it’s outside, and out.',
    instead:
      'Battery gas is as bad: stop the charging from afar and air the place. Acid on skin or in eyes: rinse with running water for 20 minutes, then a doctor.',
    call: `If the smell stays, or for acid in an eye: ${emergencyNumber}`,
    defers:
      'A licensed gas fitter finds the leak; a battery that gasses lives in a box vented to the outside.',
    never: [
      /\d\s?(?:ah|wh|w|v|%|mm²)\b/i,
      noted,
      yes,
      /\b(?:switch|turn) (?:the |a )?(?:fan|light|inverter) on\b/i,
    ],
    source: 'IEC 62485-2 and AS/NZS 5601.2 in general terms; first aid as poison centres advise',
    closer: [
      {
        of: [['acid'], ['body']],
        not: ['ignite', 'gas-word', 'bottle', 'eggs'],
        says: {
          first:
            'Rinse it with running water for 20 minutes now, an eye with its lids held open, then a doctor.',
          call: `In an eye, or a burn that hurts: ${emergencyNumber}`,
          instead: 'Take off what it wetted, washed or not. Acid goes on eating when it has stopped hurting.',
          defers: 'Gloves and goggles next time; a battery that leaks goes to a battery recycler.',
        },
      },
      {
        of: [['eggs'], ['battery', 'battery-box', 'charge', 'charger-thing', 'lead-acid']],
        not: ['gas-word', 'bottle', 'gas-alarm', 'cooker', 'smoke', 'swollen'],
        says: {
          first: 'Stop the charging, from afar; doors open, no flame or spark: that smell is battery gas.',
          call: `Hot, hissing, swollen or smoking: everybody out and well away. ${emergencyNumber}`,
          instead:
            'It is overcharged or dying: leave it off and aired for hours, and don’t charge it so again. Charger volts and battery want checking first.',
          defers:
            'Past that, a battery dealer tests it; one that gasses lives in a box vented to the outside.',
        },
      },
      {
        of: [['closed'], ['wet-lead', 'battery-box', 'lead-acid']],
        not: ['ignite', 'gas-word', 'bottle', 'eggs', 'smell', 'hiss', 'hot', 'leak', 'gas-alarm', 'smoke'],
        says: {
          first:
            'Not without a vent: on charge it gives off gas that one spark blows up. Don’t sleep beside it.',
          call: `Smell of rotten eggs already? Everybody out, touch no switch. ${emergencyNumber}`,
          instead:
            'In a box of its own, vented to the outside high up, with no switch, fuse or plug in it. Sealed AGM and gel gas when overcharged; lithium does not.',
          defers: 'Follow the maker’s sheet and your local code for where it may stand.',
        },
      },
    ],
  },
  {
    code: 'mains-wiring',
    first: 'Mains wiring is a job for a licensed electrician, by law in many places: a slip there kills.',
    instead:
      'I give no cable or terminals for it. A tingle or a breaker that trips: unplug at the post and leave it off. The 12 V side I’ll gladly size.',
    defers: 'Licensed electrician; IEC 60364-7-708 and -721, AS/NZS 3001 or your local code.',
    never: [/\d\s?mm²/i, /\bAWG\b/i, yes, /\bgoes (?:to|on) (?:the )?(?:live|neutral|earth|L|N)\b/i],
    source: 'IEC 60364-7-708 and -721; AS/NZS 3001',
  },
  {
    code: 'mains-lead',
    first: 'No, don’t use that lead: bare pins, a wet join or the metal of the van can kill.',
    instead:
      'Unplug it at the post first. Use one whole, heavy outdoor lead with its earth pin, unwound, its joins dry and off the ground.',
    defers: 'A damaged or home-made lead goes to a licensed electrician or in the bin.',
    never: [yes, /\bwill (?:do|manage|run it)\b/i],
    source: 'IEC 60364-7-708; AS/NZS 3001; common practice',
  },
  {
    code: 'backfeed',
    first: 'No: feeding a socket or inlet makes bare pins live, and two supplies at once wreck the inverter.',
    instead:
      'Plug the things straight into the inverter or generator. For fixed sockets: a changeover switch, so that only one supply can ever be on.',
    defers: 'A licensed electrician fits the changeover switch, to your local code.',
    never: [yes, /\bwill run it\b|\bbig enough\b/i],
    source: 'IEC 60364-5-55 (551) and AS/NZS 3010 in general terms',
  },
  {
    code: 'bigger-fuse',
    first:
      'No, no bigger fuse, foil or bolt: it keeps the cable from burning. It blows as something is wrong.',
    instead:
      'Same size back in, never larger than the cable allows. Then look for a chafed wire, a jammed motor or a bad plug; blows at once, it’s a short.',
    defers: 'Can’t find it? Leave it off and have an auto electrician look.',
    never: [yes, /\b(?:put|fit|use) (?:in )?(?:a |the )?(?:30|40|50|60|80|100) ?A\b/i],
    source: 'ABYC E-11 and ISO 13297 in general terms',
  },
  {
    code: 'no-fuse',
    ...fuseBeside(' Tell me load and cable and I’ll name the size.'),
    never: [yes, /\b(?:not needed|no need|can skip|leave it out)\b/i],
    source: 'ABYC E-11 and ISO 13297 in general terms',
    // What was told is not asked for again.
    closer: [
      { of: [['told-load'], ['told-cable']], not: [], says: fuseBeside('') },
      { of: [['told-load']], not: [], says: fuseBeside(' Tell me the cable and I’ll name the size.') },
      { of: [['told-cable']], not: [], says: fuseBeside(' Tell me the load and I’ll name the size.') },
    ],
  },
  {
    code: 'over-current',
    first: 'Each part has its limit in amps: past the smallest one it trips or overheats.',
    instead:
      'Battery, fuse, plug and cable all count. If a cable or plug gets warm or a fuse holder goes brown, switch off and have it put right first.',
    defers: 'The maker’s limit on the label comes first; not sure, ask an auto electrician.',
    never: [yes, /\btight\b(?! lugs)/i],
    source: 'Makers’ limits; IEC 60364-5-52, ISO 4165, ISO 1724 and ISO 10133 in general terms',
    closer: [
      {
        of: [
          ['hot', 'warm', 'melt', 'burnt-smell', 'unbearable'],
          ['ciggy', 'plug', 'socket', 'small-plug'],
        ],
        not: ['alternator', 'bms'],
        says: {
          first:
            'Unplug it and let it cool: a plug that hot has a bad contact, and can melt or start a fire.',
          instead:
            'Clean it bright or, better, fit a screw-in or two-pole plug. Brown or soft plastic: new plug and socket. Check that fuse and wire suit the amps.',
          defers: 'Still warm with a good plug? Leave it off and have an auto electrician look.',
        },
      },
      {
        of: [
          ['hot', 'warm', 'unbearable'],
          ['lug', 'join', 'tape', 'post'],
        ],
        not: ['alternator', 'ciggy', 'bms', 'fuse', 'mains'],
        says: {
          first: 'Switch it off: a joint that gets warm is a bad contact, and can melt or start a fire.',
          instead:
            'Once cool, remake it: a crimped lug or joiner, or solder that is held still, on bright metal, done up hard. Not twisted and taped. A fuse at the battery end.',
          defers: 'Still warm, or the cable warm all along? Leave it off and have an auto electrician look.',
        },
      },
      {
        of: [['hot', 'warm', 'melt', 'burnt-smell', 'unbearable']],
        not: ['alternator', 'ciggy', 'bms'],
        says: {
          first: 'Switch it off: what gets hot in use carries too much, or sits on a bad joint.',
          instead:
            'Look once it has cooled. Hot in one spot is a joint to be remade, warm all along is too thin a cable: use it again only when that is put right.',
          defers: 'Not found? Leave it off and have an auto electrician look.',
        },
      },
      {
        of: [['ciggy']],
        not: ['alternator', 'bms'],
        says: {
          first: 'A lighter socket carries about 10 A for long: more melts its plug or blows its fuse.',
          instead:
            'What draws more gets a screwed or 50 A plug on a fused cable of its own, straight from the battery. A warm plug: switch off.',
          defers: 'The size of the socket’s fuse comes first; not sure, ask an auto electrician.',
        },
      },
      {
        of: [['lithium'], ['alternator'], ['dcdc'], ['direct', 'no-dcdc']],
        not: ['hot', 'smoke'],
        says: {
          first:
            'Use a DC-DC charger: straight on, lithium takes more than an alternator can give, and cooks it.',
          instead:
            'It holds the battery to its own amps: about half of the alternator’s rating for long is fair.',
          defers: 'The makers’ limits come first; not sure, ask an auto electrician.',
        },
      },
      {
        of: [['lithium'], ['alternator']],
        not: ['dcdc', 'hot', 'smoke'],
        says: {
          first:
            'No, not straight on: lithium takes more than an alternator can give for long, and cooks it.',
          instead:
            'A DC-DC charger between them holds it to its own amps: about half of the alternator’s rating for long is fair.',
          defers: 'The makers’ limits come first; not sure, ask an auto electrician.',
        },
      },
    ],
  },
  {
    code: 'cold-charge',
    first: 'Don’t charge lithium at or below 0 °C: it plates metal inside the cells and ruins them for good.',
    instead:
      'Warm the battery itself above 5 °C first (heated space, pad, or wait for the day), then charge it as usual. Using it in the cold is fine down to what the label says.',
    defers: 'The maker’s charging temperatures count; don’t switch off its low-temperature protection.',
    never: [yes, /\b(?:override it by|to override it|bypass (?:it|the BMS) (?:by|with))\b/i],
    source: 'Makers’ common data for LiFePO4 cells; IEC 62619 in general terms',
  },
  {
    code: 'generator-inside',
    first:
      'No, never in, under or beside a van, tent, awning or boot, open or not: exhaust kills in minutes.',
    instead:
      'Out in the open, 6 m or more away and downwind, exhaust pointing off, under a rain hood of its own. A carbon monoxide alarm where you sleep.',
    defers: 'Follow the maker’s manual and the site’s rules.',
    never: [yes, /\bhow many watts\b|\bwhat(?:’s| is) (?:its|the) load\b/i],
    source: 'ISO 8528-13 and AS/NZS 3010 in general terms; makers’ common data',
  },
  {
    code: 'mixed-parallel',
    first: 'No, don’t join unlike batteries: one pushes current into the other, and neither charges right.',
    instead:
      'Keep them apart: each with its own loads, or a DC-DC charger from one to the other. In parallel only same kind, size and age.',
    defers: 'Ask the maker before joining anything to a lithium battery.',
    never: [yes, /^\d+ ?Ah\b/i],
    source: 'ABYC E-13 and makers’ common data',
  },
  {
    code: 'medical',
    first: 'Somebody’s health depends on this: plan it with half as much again, and a fallback.',
    shortly: 'As it’s medical: half as much again in hand, and a fallback.',
    instead: 'Try it at home for a night first, and know how you get mains or help if it stops.',
    defers: 'Ask the clinic or the maker about running it from a battery, the inverter and the spare.',
    never: [/^(?:yes|easily)\b/i, /\baverage(?:d)? over 24\b/i],
    source: 'IEC 60601-1-11 in general terms; makers’ common data',
  },
  {
    code: 'jump-start',
    first: 'Don’t jump it if it is frozen, swollen or bubbling, from 24 V, or off a lithium house battery.',
    instead:
      'Else: red to flat plus, red to good plus, black to good minus, black last to bare metal of the dead engine away from its battery; off in the reverse order.',
    defers: 'The vehicle’s handbook comes first; roadside help is the safe way.',
    never: [yes],
    source: 'Common practice; vehicle makers’ handbooks in general terms',
  },
  {
    code: 'starter-flat',
    first: 'Don’t run camp gear long off the only starter battery: keep three quarters, or it may not start.',
    instead:
      'A second battery behind an isolator or DC-DC ends the worry. Flat already? Everything off, an hour’s rest, then a charger or help.',
    defers: 'Alone and far out, tell somebody where you are before you risk it.',
    never: [yes],
    source: 'Common practice; EN 50342-1 in general terms',
  },
];
