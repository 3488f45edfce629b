/** Words that never name a load by themselves: the small words of the language, and talk about amounts. */
export const plainWords: ReadonlySet<string> = new Set(
  `a an the this that these those it its he she they we i you u me us him her them my our your his their mine ours yours
  is are was were be been being am isnt arent wasnt werent do does did dont doesnt didnt has have had havent hasnt having got get gets getting
  can could will would shall should may might must cant couldnt wont wouldnt shouldnt ill youll well theyll itll id youd wed theyd ive youve weve theyve im youre were theyre hes shes
  and or but if then than so as of off on in at by to from for with without into onto out up down over under about around round near per via through thru
  not no nor yes yeah yep nope nah ok okay please pls plz thanks thx ta
  what which who whom whose when where why how whats whos wheres hows wots wats wot wat hw
  all any both each every either neither some many much more most less least few lot lots enough other another same only just also too very quite really rather pretty
  now today tonight tomorrow yesterday soon later again still yet already always never ever often sometimes here there
  one two three four five six seven eight nine ten first second third last next half quarter couple dozen hundred
  day days night nights hour hours hr hrs min mins minute minutes week weeks weekend month months year years time times morning evening afternoon arvo noon midnight daily nightly overnight overnite
  amp amps ampere volt volts watt watts ah wh kwh kw mah w v h
  run runs running ran use uses used using draw draws drawing drew pull pulls pulling take takes taking need needs needed last lasts make makes making give gives giving put puts keep keeps go goes going come comes
  want wants think thinks reckon reckons say says said know knows see look like likes try tried start starts stop stops turn turned plus minus average averages averaging avg max maximum min minimum total
  nonstop constant constantly continuous continuously steady rated approx approximately roughly bout maybe probably perhaps nearly almost
  good bad big small little old new hot cold warm long short right wrong better best fine sweet cheap full empty flat dead high low
  side setup rig system trip camp camping camper van car ute truck caravan trailer tent boat bus motorhome rv home site beach bush lake river
  work works working worked working label plate sticker box manual meter reading shows display says
  hi hello hey hiya gday mate mates guys folks all dear sorry help bot
  him her them else nothing something anything everything someone anyone
  going gonna gotta wanna let lets since because cause cos though while until till til before after between during against
  across along behind beside within instead except like unlike thats theres heres whats
  charge charging charged charger recharge drive driving solar sun sunny cloud cloudy overcast battery batteries panel panels inverter cable wire fuse alternator
  parallel series bank volts current power energy load loads percent
  jan feb mar apr jun jul aug sep sept oct nov dec january february march april june july august september october november december
  mon tue tues wed thu thur thurs fri sat monday tuesday wednesday thursday friday saturday sunday
  single double triple twin pair dual pure sine modified wave mppt pwm dcdc dc ac agm gel lithium lifepo4 lfp flooded lead acid
  startup start glow boot continuous peak surge standby idle hooked connected plugged plug outlet socket
  mm mm2 awg gauge metre metres meter meters feet foot ft m cm inch inches b&s
  coming left leaves leave arrive arrived arriving back whatever straight direct directly apiece ea apart together
  instead total totals combined per day worth
  output input wall brick usb socket supply adapter adaptor port drain budget yield winter summer spring autumn fall
  rest breaks break blow blows trip trips draws losses loss drop drops extra spare another
  `.split(/\s+/).filter(Boolean),
);

/** Nouns that stand for "whatever draws this". */
export const genericNouns: ReadonlySet<string> = new Set(['stuff', 'load', 'loads', 'circuit', 'gear', 'appliance', 'appliances', 'thing', 'things', 'thingy', 'device', 'devices', 'accessories', 'kit', 'bits', 'gizmo', 'electronics', 'gadgets', 'consumer', 'consumers', 'unit', 'item', 'machine', 'odds', 'electrics', 'parasitic', 'setup', 'lot', 'draw']);

/** Appliances that are also everyday words: they count only with a figure or with an article. */
export const weakNames: ReadonlySet<string> = new Set(['coffee', 'toast', 'music', 'shower', 'toilet', 'iron', 'saw', 'horn', 'alarm', 'screen', 'vent', 'device', 'gadget', 'grill', 'jack', 'motor', 'phone', 'mobile', 'lite', 'dish', 'internet', 'camera', 'jug', 'stove', 'server', 'console', 'washer', 'dryer', 'pc', 'stereo', 'radio', 'torch', 'switch', 'blanket', 'esky', 'espresso', 'espressos', 'tele', 'cooler', 'accessory', 'headlight', 'globe', 'drill', 'tracker', 'antenna', 'steamer', 'mixer', 'gps', 'dvd', 'screens', 'controller box', 'cb', 'hob', 'drier', 'receiver', 'sounder', 'navigator', 'navigation', 'fone', 'wifi', 'radiator', 'griddle', 'skillet', 'heating', 'lighting', 'pa', 'cam', 'wireless']);

/** Names of things that some people have as well, fewer of them: "cam 0.4 A". Before a verb of saying they are somebody all the same. */
export const thingsFirst: ReadonlySet<string> = new Set(['cam']);

/** Short and slang names of things that are told by the name of their row. */
export const nicknames: ReadonlySet<string> = new Set(['lappy', 'lappie', 'snore mask', 'c pap', 'fone', 'fones']);
