import type { Chemistry } from '#rig/rig.ts';
import type { Cue } from '../../said.ts';

/** What a word of the trade names, with what it tells of it, and the cues it gives. */
export interface Gear {
  readonly kind: 'battery' | 'solar' | 'charger' | 'inverter' | 'cable' | 'fuse' | 'other';
  readonly names: readonly string[];
  readonly cues: readonly Cue[];
  readonly chemistry?: Chemistry;
  readonly role?: 'house' | 'starter';
  readonly charger?: 'dcdc' | 'isolator' | 'mains' | 'generator';
  readonly controller?: 'mppt' | 'pwm';
  readonly wave?: 'pure-sine' | 'modified-sine';
}

/** Singular, lower case, hyphens as spaces; plurals are made. */
export const gear: readonly Gear[] = [
  { kind: 'battery', cues: ['battery'], names: ['battery', 'batt', 'bat', 'batery', 'battry', 'batterie', 'bateria', 'batteri', 'accu', 'deep cycle', 'deep cycle battery', 'leisure battery', 'leisure batt', 'marine battery', 'battery bank', 'batt bank', 'bank of batteries', 'battery pack', 'batterypack', 'cell bank', 'battery system', 'battery box', 'battery storage', 'akku', 'cranker deep cycle', 'dual purpose battery', 'power bank', 'powerbank', 'jump pack'] },
  { kind: 'battery', cues: ['battery'], role: 'house', names: ['house battery', 'aux battery', 'auxiliary battery', 'aux', 'auxiliary', 'house bank', 'house batt', 'service battery', 'cabin battery', 'domestic battery', 'habitation battery', 'camper battery', 'second battery', 'secondary battery', '2nd battery', 'hab battery', 'house'] },
  { kind: 'battery', cues: ['battery', 'starter'], role: 'starter', names: ['starter battery', 'starter batt', 'starter', 'starting battery', 'start battery', 'cranking battery', 'crank battery', 'cranker', 'car battery', 'main battery', 'engine battery', 'truck battery', 'van battery starter', 'vehicle battery', 'under bonnet battery', 'chassis battery', 'utes battery', 'cranking batt', 'car batt', 'ute battery', 'sli battery', 'cars battery'] },
  { kind: 'battery', cues: ['battery', 'power-station'], names: ['power station', 'powerstation', 'power pack', 'powerpack', 'solar generator', 'portable power station', 'portable power', 'battery generator', 'battery station'] },
  { kind: 'battery', cues: ['agm'], chemistry: 'agm', names: ['agm', 'agm battery', 'agm batt', 'agm deep cycle', 'agm type', 'sealed agm', 'absorbed glass mat', 'absorbent glass mat', 'glass mat', 'agms', 'amg', 'agm leisure battery'] },
  { kind: 'battery', cues: ['gel'], chemistry: 'gel', names: ['gel', 'gel battery', 'gel cell', 'gelcell', 'gel batt'] },
  { kind: 'battery', cues: ['flooded'], chemistry: 'flooded', names: ['flooded', 'wet cell', 'flooded battery', 'flooded lead acid', 'wet battery', 'wet lead acid', 'wetcell', 'flooded cell', 'unsealed', 'wet cell battery', 'fla', 'flooded house battery', 'flooded lead', 'golf cart battery'] },
  { kind: 'battery', cues: ['lfp'], chemistry: 'lfp', names: ['lithium', 'lithum', 'lithim', 'lithiun', 'lithuim', 'litium', 'lith', 'lithium battery', 'lithium batt', 'lithium ion', 'li ion', 'lion battery', 'lifepo4', 'lifepo', 'life po4', 'lifepo 4', 'lifpo4', 'li fe po4', 'lfp', 'lithium iron', 'lithium iron phosphate', 'iron phosphate', 'lipo4', 'lithium deep cycle', 'lithium bank', 'lithium power station', 'lifepo4 battery', 'lithium phosphate', 'litio'] },
  { kind: 'battery', cues: [], chemistry: 'lead-acid', names: ['lead acid', 'leadacid', 'sla', 'vrla', 'calcium battery', 'calcium', 'lead calcium', 'sealed lead', 'sealed lead battery', 'lead acid battery', 'sealed lead acid', 'lead battery', 'lead acid batt'] },

  { kind: 'solar', cues: ['solar'], names: ['solar', 'solar panel', 'panel', 'pannel', 'panal', 'pv', 'solar blanket', 'folding panel', 'portable panel', 'solar array', 'array', 'solar setup', 'solar kit', 'solar pannel', 'folding solar', 'portable solar', 'roof panel', 'roof solar', 'solar module', 'solar mat', 'monocrystalline', 'solar cell', 'pv panel', 'solar system', 'solar suitcase', 'panneau', 'solarpanel', 'solars', 'solar blankets', 'paneles', 'flexible panel', 'fixed panel', 'flexi panel', 'solar power', 'sola', 'soler', 'solar input', 'rooftop solar', 'solarmodul', 'solarpanels'] },
  { kind: 'solar', cues: ['solar', 'controller'], controller: 'mppt', names: ['mppt', 'mppt controller', 'mppt regulator', 'mptt', 'mpt', 'mpp', 'mppt reg', 'mppt solar', 'mppt charge controller', 'mppt charger', 'mppt solar charger'] },
  { kind: 'solar', cues: ['solar', 'controller'], controller: 'pwm', names: ['pwm', 'pwm controller', 'pwm regulator', 'pwm reg', 'pwn', 'pmw', 'pwm solar', 'pwm charge controller'] },
  { kind: 'other', cues: ['controller'], names: ['controller', 'solar controller', 'charge controller', 'regulator', 'solar regulator', 'solar charge controller', 'reg'] },

  { kind: 'charger', cues: ['charger', 'dcdc'], charger: 'dcdc', names: ['dcdc', 'booster', 'charging booster', 'charge booster', 'dc dc', 'dc to dc', 'dc2dc', 'b2b', 'b to b', 'bcdc', 'dcdc charger', 'dc dc charger', 'dc to dc charger', 'b2b charger', 'battery to battery charger', 'battery to battery', 'dc charger', 'alternator charger', 'in vehicle charger', 'dc 2 dc', 'dcdcs', 'bc dc', 'dc dc unit', 'd c d c', 'dc2dc charger', 'dc converter', 'dcdc unit', 'dc / dc'] },
  { kind: 'charger', cues: ['charger', 'isolator'], charger: 'isolator', names: ['isolator', 'vsr', 'split charger', 'split charge', 'split charge relay', 'voltage sensing relay', 'voltage sensitive relay', 'battery isolator', 'dual battery isolator', 'smart isolator', 'solenoid', 'smart solenoid', 'charge relay', 'relay', 'split relay', 'combiner', 'battery combiner', 'acr', 'isolater', 'smart relay', 'voltage sensitive isolator', 'isolator relay'] },
  { kind: 'charger', cues: ['charger', 'mains'], charger: 'mains', names: ['mains charger', '240v charger', '230v charger', '120v charger', '110v charger', 'ac charger', 'battery charger', 'wall charger', 'wall brick', 'wall wart', 'shore charger', 'hook up charger', 'hookup charger', 'converter', 'converter charger', 'ac dc charger', 'shore power charger', 'smart charger', 'wall plug', 'ac adapter', 'ac adaptor', 'power brick', 'bench charger', 'trickle charger', 'ladegerät', 'ac input', 'wall adapter', 'wall socket charger', 'wall outlet', 'charging brick', 'onboard charger', 'on board charger'] },
  { kind: 'charger', cues: ['charger'], names: ['charger', 'chager', 'chargr'] },
  { kind: 'charger', cues: ['generator'], charger: 'generator', names: ['generator', 'genny', 'gennie', 'genset', 'gen set', 'jenny', 'genie', 'gen', 'inverter generator', 'inverter genny', 'petrol generator', 'petrol genny', 'suitcase generator', 'suitcase genny', 'genarator', 'generater', 'diesel generator', 'gas generator', 'geny', 'genni', 'portable generator', 'inverter gen'] },

  { kind: 'inverter', cues: ['inverter'], names: ['inverter', 'invertor', 'inverer', 'invertr', 'inverters', 'power inverter', 'inv', 'inverta', 'combi inverter', 'inverter charger', 'wechselrichter'] },
  { kind: 'inverter', cues: ['inverter'], wave: 'pure-sine', names: ['pure sine', 'pure sine wave', 'pure sine inverter', 'pure sine wave inverter', 'psw', 'true sine', 'true sine wave', 'sine wave inverter', 'puresine', 'psw inverter', 'sine wave'] },
  { kind: 'inverter', cues: ['inverter'], wave: 'modified-sine', names: ['modified sine', 'modified sine wave', 'modified wave', 'msw', 'modified sine inverter', 'modified sine wave inverter', 'mod sine', 'square wave', 'quasi sine', 'modified inverter', 'msw inverter', 'modified', 'modified square wave'] },

  { kind: 'cable', cues: ['cable'], names: ['cable', 'wire', 'wiring', 'lead wire', 'cabling', 'twin core', 'twin cable', 'conductor', 'cord', 'wire size', 'cable run', 'wire run', 'kabel', 'welding cable', 'battery cable', 'twincore', 'speaker wire', 'lead and plug', 'flex', 'jumper wire', 'cable size', 'wire gauge', 'battery lead', 'extension lead', 'twin sheath', 'copper', 'cabel', 'wireing', 'kable', 'tinned cable', 'cables'] },
  { kind: 'cable', cues: ['cable', 'auto-cable'], names: ['auto cable', 'auto wire', 'automotive cable', 'automotive wire', 'auto shop cable', 'auto twin', 'car cable', 'automotive', 'auto', 'trailer cable', 'auto shop', 'auto electrical cable', 'auto store'] },
  { kind: 'fuse', cues: ['fuse'], names: ['fuse', 'fusing', 'breaker', 'circuit breaker', 'inline fuse', 'blade fuse', 'midi fuse', 'mega fuse', 'anl', 'anl fuse', 'fused', 'maxi fuse', 'fuze', 'fusible link', 'sicherung', 'fusible', 'class t fuse', 'fuse size', 'fuse rating', 'main fuse', 'mrbf', 'mccb', 'trip breaker'] },
  { kind: 'other', cues: ['alternator'], names: ['alternator', 'alternater', 'alt', 'alternator output', 'altenator'] },
  { kind: 'other', cues: ['alternator', 'smart-alternator'], names: ['smart alternator', 'smart alt', 'smart alternators', 'variable voltage alternator', 'variable alternator', 'ecu controlled alternator', 'smart charge alternator', 'euro 6', 'euro6', 'euro 5', 'regen braking', 'stop start', 'start stop', 'regenerative braking', 'temperature compensated alternator', 'computer controlled alternator', 'low voltage alternator', 'intelligent alternator', 'variable volt alternator'] },
  { kind: 'other', cues: ['monitor'], names: ['battery monitor', 'monitor', 'shunt', 'volt meter', 'voltmeter', 'multimeter', 'volt gauge', 'battery gauge', 'battery meter', 'smart shunt'] },
  { kind: 'other', cues: ['bms'], names: ['bms', 'battery management system', 'battery management', 'b m s'] },
  { kind: 'other', cues: ['mains'], names: ['mains', 'shore power', 'hook up', 'hookup', 'hookups', 'powered site', 'shore', '240v', '230v', '240 volt', '230 volt', 'wall socket', 'ehu', 'electric hook up', 'electric hookup', 'mains power', 'mains hookup', 'power pole', 'camp site power', 'site power', 'plugged in', 'plug in', 'mains electric'] },
];
