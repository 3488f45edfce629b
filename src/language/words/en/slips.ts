import { table } from '../table.ts';

/** Common misspellings and shortenings that are more than one slip away, or would be taken for a word of their own. */
export const slips = table({
  whit: 'what', goin: 'going', aff: 'off', oot: 'out', dae: 'do', tae: 'to', frige: 'fridge', fridg: 'fridge', frdge: 'fridge', refridgerator: 'refrigerator', refrigirator: 'refrigerator', fridgerator: 'refrigerator', fride: 'fridge', frigde: 'fridge', fidge: 'fridge',
  frezer: 'freezer', freezr: 'freezer', ketle: 'kettle', kettel: 'kettle', microwav: 'microwave', micro: 'microwave', lite: 'light', lites: 'lights', ligths: 'lights', lihgts: 'lights',
  batery: 'battery', battry: 'battery', baterry: 'battery', batt: 'battery', batts: 'batteries', bateries: 'batteries', lithum: 'lithium', lithim: 'lithium', lithiun: 'lithium', lithuim: 'lithium', litium: 'lithium',
  pannel: 'panel', pannels: 'panels', panal: 'panel', panals: 'panels', soler: 'solar', sola: 'solar', chager: 'charger', chargr: 'charger', invertor: 'inverter', inverer: 'inverter', invertr: 'inverter', inverta: 'inverter',
  genarator: 'generator', generater: 'generator', alternater: 'alternator', altenator: 'alternator', isolater: 'isolator', fuze: 'fuse', cabel: 'cable', kable: 'cable', fone: 'phone', fones: 'phones',
  hw: 'how', lng: 'long', wil: 'will', nite: 'night', nites: 'nights', overnite: 'overnight', tonite: 'tonight', thru: 'through', wot: 'what', wat: 'what', wots: 'whats', wats: 'whats', ov: 'of', dayz: 'days', hrz: 'hrs',
  enuf: 'enough', enuff: 'enough', cuz: 'because', coz: 'because', wich: 'which', amg: 'agm', mptt: 'mppt', mpt: 'mppt', pwn: 'pwm', pmw: 'pwm', seires: 'series', paralell: 'parallel', parallell: 'parallel', paralel: 'parallel', parralel: 'parallel', parrallel: 'parallel',
  avrg: 'average', averge: 'average', avarage: 'average', avge: 'average', avereage: 'average', fortnite: 'fortnight', wkend: 'weekend', weekened: 'weekend', blanky: 'blanket', telli: 'telly', lappy: 'laptop', laptp: 'laptop', recon: 'reckon', recons: 'reckons', rekon: 'reckon', rekons: 'reckons', sez: 'says',
  guage: 'gauge', gage: 'gauge', mtrs: 'metres', wattz: 'watts', ampz: 'amps', voltz: 'volts', percant: 'percent', feburary: 'february', wensday: 'wednesday', wendsday: 'wednesday', tmrw: 'tomorrow', tmr: 'tomorrow', charing: 'charging', chargin: 'charging', runnin: 'running', drivin: 'driving', sittin: 'sitting', campin: 'camping', usin: 'using', pullin: 'pulling', drawin: 'drawing',
});
