/** How people name what uses power. `spread` puts a plural beside each spelling. */
export interface Appliance {
  /** Spellings, singular, lower case. */
  readonly names: readonly string[];
  readonly supply: 'dc' | 'ac';
  /** Runs day and night unless told otherwise: trailing hours of a neighbour don't apply to it. */
  readonly isAlwaysOn?: true;
}

const dc = (...names: string[]): Appliance => ({ names, supply: 'dc' });
const ac = (...names: string[]): Appliance => ({ names, supply: 'ac' });
const always = (...names: string[]): Appliance => ({ names, supply: 'dc', isAlwaysOn: true });

export const appliances: readonly Appliance[] = [
  always('fridge', 'chilly bin fridge', 'frige', 'fridg', 'frdge', 'refrigerator', 'refridgerator', 'reefer', 'car fridge', 'camp fridge', 'camping fridge', 'bar fridge', 'chest fridge', 'drawer fridge', 'compressor fridge', 'portable fridge', 'residential fridge', 'fridge freezer', 'upright fridge', 'dual zone fridge', 'dual zone', 'cool box', 'coolbox', 'cooler box', 'cooler', 'coolbag', 'electric cooler', 'thermoelectric cooler', 'ice box', 'icebox', 'mini fridge', 'wine fridge', 'compressor cooler', 'kylskåp', 'kühlschrank', 'kühlbox', 'nevera', 'koelkast', 'frigo'),
  always('freezer', 'frezer', 'deep freezer', 'chest freezer', 'deep freeze', 'portable freezer', 'ice maker'),
  dc('light', 'lite', 'led', 'led light', 'led strip', 'strip light', 'light strip', 'lamp', 'reading lamp', 'reading light', 'camp light', 'camping light', 'awning light', 'lantern', 'bulb', 'light bulb', 'led bulb', 'led lamp', 'led bar', 'light bar', 'fairy light', 'string light', 'downlight', 'spotlight', 'spot light', 'flood light', 'floodlight', 'head torch', 'torch', 'flashlight', 'interior light', 'cabin light', 'tent light', 'work light', 'lighting', 'night light', 'globe', 'lampe', 'luz', 'head light', 'headlight', 'parking light', 'side light', 'sidelight', 'dome light', 'cabin lamp', 'led panel', 'led panel light'),
  dc('fan', 'roof fan', 'ceiling fan', 'vent fan', 'exhaust fan', 'extractor fan', 'extractor', 'roof vent', 'vent', 'ventilator', 'desk fan', 'cabin fan', 'fridge fan', 'computer fan', 'cooling fan', 'tent fan', 'heater fan', 'bathroom fan', 'blower', 'blower fan'),
  dc('water pump', 'pump', 'shower pump', 'bilge pump', 'transfer pump', 'pressure pump', 'shower', 'camp shower', 'air pump', 'inflator', 'air compressor', 'tyre compressor', 'tire compressor', 'compressor', 'tyre pump', 'tire pump', 'macerator', 'submersible pump', 'toilet pump', 'pumpe', 'fuel pump', 'grey water pump', 'bait pump'),
  dc('phone', 'mobile', 'mobile phone', 'cell phone', 'cellphone', 'smartphone', 'phone charging', 'phone charger', 'fone'),
  dc('tablet', 'e reader', 'ereader', 'tablet charger'),
  dc('laptop', 'lap top', 'notebook', 'laptop charger', 'computer', 'work laptop', 'work computer'),
  dc('camera', 'camera charger', 'camera battery charger', 'drone', 'drone charger', 'drone battery', 'dash cam', 'dashcam', 'dash camera', 'reversing camera', 'backup camera', 'security camera', 'camera battery'),
  dc('router', 'modem', 'wifi', 'wi fi', 'wifi router', 'wi fi router', 'hotspot', 'internet', 'booster', 'signal booster', 'cell booster', 'satellite internet', 'sat internet', 'satellite dish', 'sat dish', 'dish', 'satellite internet dish', 'satellite system', 'antenna'),
  dc('tv', 'telly', 'television', 'smart tv', 'tele', 'monitor screen', 'computer monitor', 'dvd player', 'dvd', 'projector', 'tv set', 'tv box', 'set top box', 'screen', 'satellite receiver', 'receiver'),
  dc('radio', 'stereo', 'cb radio', 'uhf', 'uhf radio', 'uhf charger', 'ham radio', 'speaker', 'bluetooth speaker', 'sound bar', 'soundbar', 'music', 'amplifier', 'subwoofer', 'transceiver', 'radio set', 'cb', 'vhf', 'chartplotter', 'gps', 'fish finder', 'fishfinder', 'sounder', 'navigator', 'autopilot'),
  dc('cpap', 'cpap machine', 'c pap', 'bipap', 'bi pap', 'apap', 'sleep machine', 'sleep apnea machine', 'sleep apnoea machine', 'apnoea machine', 'apnea machine', 'breathing machine', 'oxygen concentrator', 'concentrator', 'nebuliser', 'nebulizer', 'ventilator machine', 'humidifier', 'medical device', 'insulin fridge', 'insulin cooler', 'medicine fridge', 'breast pump', 'pap machine', 'oxygen machine'),
  dc('diesel heater', 'parking heater', 'air heater', 'heater', 'cabin heater', 'night heater', 'gas heater', 'gas furnace', 'furnace', 'furnace fan', 'furnace blower', 'diesel air heater', 'heating', 'propane furnace', 'fuel heater', 'space heater', 'hot water system', 'water heater', 'heater blower', 'seat heater', 'fish tank heater', 'heizung'),
  dc('electric blanket', 'heated blanket', 'blanket', 'heat pad', 'heating pad', 'heat blanket', 'heated mattress', 'heated throw', 'heated seat', 'heated vest', 'bed warmer', 'leccy blanket'),
  dc('oven', 'travel oven', 'pie oven', 'pie warmer', 'lunch box oven', 'food warmer', 'camp oven', 'bottle warmer', 'travel kettle', 'cigarette lighter socket', 'usb', 'usb socket', 'usb outlet', 'usb port', 'usb fan', 'usb light', 'usb charger', 'lighter socket', 'accessory', 'gadget', 'device', 'awning motor', 'winch', 'motor', 'trolling motor', 'jack', 'slide out', 'leveling jack', 'levelling jack', 'stereo amp', 'horn', 'solenoid', 'actuator', 'controller box', 'alarm', 'tracker', 'gas detector', 'co alarm', 'smoke alarm', 'detector', 'toilet', 'composting toilet', 'toilet fan', 'ice shaver', 'e bike charger', 'ebike charger', 'ebike', 'e bike', 'scooter', 'console', 'game console', 'games console', 'gaming console', 'mosquito zapper', 'bug zapper', 'water purifier', 'uv lamp', 'aquarium', 'aquarium pump', 'air purifier', 'dehumidifier fan', 'sewing machine', 'evap cooler', 'evaporative cooler', 'swamp cooler', 'hot dog cooker'),
  ac('kettle', 'ketle', 'electric kettle', 'jug', 'electric jug', 'wasserkocher'),
  ac('coffee machine', 'coffee maker', 'coffee pot', 'espresso machine', 'espresso maker', 'pod machine', 'coffee pod machine', 'coffee grinder', 'drip coffee maker', 'percolator', 'coffeemaker', 'milk frother', 'espresso', 'coffee'),
  ac('toaster', 'sandwich press', 'sandwich toaster', 'sandwich maker', 'jaffle maker', 'toastie maker', 'toasty maker', 'waffle maker', 'waffle iron', 'toaster oven', 'panini press', 'grill', 'electric grill', 'griddle', 'electric griddle', 'electric frypan', 'frypan', 'fry pan', 'electric bbq', 'electric skillet', 'skillet', 'deep fryer', 'pizza oven', 'egg cooker'),
  ac('microwave', 'micro wave', 'microwave oven', 'microwav', 'nuker', 'mikrowelle'),
  ac('induction hob', 'induction cooker', 'induction cooktop', 'induction plate', 'induction stove', 'induction', 'hob', 'cooktop', 'hot plate', 'hotplate', 'electric stove', 'electric hob', 'stove', 'induction top', 'induction burner'),
  ac('air fryer', 'airfryer', 'air frier', 'mini oven', 'electric oven', 'convection oven', 'bench top oven', 'benchtop oven'),
  ac('slow cooker', 'crock pot', 'crockpot', 'rice cooker', 'pressure cooker', 'multi cooker', 'multicooker', 'sous vide', 'bread maker', 'breadmaker', 'food processor', 'dishwasher', 'juicer', 'stand mixer', 'mixer', 'soup maker', 'food dehydrator', 'dehydrator', 'steamer', 'clothes steamer', 'garment steamer', 'popcorn maker', 'yoghurt maker'),
  ac('blender', 'smoothie maker', 'stick blender', 'bullet blender', 'smoothie blender', 'margarita maker'),
  ac('hair dryer', 'hairdryer', 'hair drier', 'hairdrier', 'blow dryer', 'blow drier', 'hair straightener', 'straightener', 'hair straighteners', 'curling iron', 'curling wand', 'hair curler', 'straighteners', 'hot air brush', 'hair iron'),
  ac('vacuum', 'vacuum cleaner', 'iron', 'clothes iron', 'steam iron', 'washing machine', 'washer', 'clothes dryer', 'tumble dryer', 'dryer', 'drier', 'spin dryer'),
  ac('drill', 'drill charger', 'power tool', 'tool charger', 'tool battery charger', 'power tool charger', 'grinder', 'angle grinder', 'circular saw', 'saw', 'jigsaw', 'chainsaw', 'sander', 'heat gun', 'soldering iron', 'drill press', 'bench grinder', 'welder', 'pressure washer', 'leaf blower', 'hedge trimmer', 'mitre saw', 'chop saw', 'table saw', 'shop vac', 'battery tool charger'),
  ac('air con', 'aircon', 'air conditioner', 'air conditioning', 'air conditioner unit', 'ac unit', 'a c unit', 'rooftop ac', 'roof ac', 'rv ac', 'split system', 'reverse cycle', 'portable ac', 'aircon unit', 'airconditioner', 'rooftop aircon', 'roof air'),
  ac('electric heater', 'fan heater', 'oil heater', 'ceramic heater', 'radiant heater', 'bar heater', 'electric radiator', 'radiator', 'immersion heater', 'electric fireplace', 'towel rail', 'infrared heater', 'convector', 'convector heater', 'panel heater', 'oil radiator'),
  ac('desktop', 'desktop computer', 'desktop pc', 'pc', 'gaming pc', 'gaming laptop', 'printer', 'server', 'nas'),
];
