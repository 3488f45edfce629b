import { readFileSync, writeFileSync } from 'node:fs';
import { readWorld } from '../climate/file.ts';
import { fitClimate } from './climate/fit.ts';
import { leftOutErrors } from './climate/left-out.ts';
import { type Errors, fitErrors, latitudeErrors, temperatureErrors, townsOf } from './climate/measure.ts';
import { readReference } from './climate/reference.ts';

// `npm run fit:climate -- FILE [--check]`: fits the shipped model of sun and temperature to a reference and prints
// how far it is from it at the world's towns. With --check it writes nothing, and fails where the shipped one differs.
const [path] = process.argv.slice(2).filter(word => !word.startsWith('--'));
const isCheck = process.argv.includes('--check');
const shipped = new URL('../climate/data/world.bin', import.meta.url);

const line = (what: string, errors: Errors): string =>
  `${what}: RMS ${errors.rmsPercent.toFixed(2)} %, ${errors.withinFifthPercent.toFixed(2)} % within 20 %, ` +
  `worst ${errors.worstPercent.toFixed(0)} %, in the dark ${errors.worstDarkKWhM2.toFixed(2)} kWh/m²`;

if (path === undefined) {
  console.error('which reference? npm run fit:climate -- FILE');
  process.exitCode = 2;
} else {
  const reference = readReference(path);
  const towns = townsOf(readFileSync(new URL('../places/data/world.txt', import.meta.url), 'utf8'));
  const file = fitClimate(reference, towns);
  const world = readWorld(file);
  console.log(`${file.length} bytes, ${towns.length} towns`);
  console.log(line('sun', fitErrors(towns, reference, world)));
  for (const sideDeg of [2, 5, 10])
    console.log(
      line(`sun, squares of ${sideDeg}° left out`, leftOutErrors(towns, reference, world, sideDeg)),
    );
  const { dayK, nightK } = temperatureErrors(towns, reference, world);
  console.log(`temperature: RMS ${dayK.toFixed(2)} K by day, ${nightK.toFixed(2)} K by night`);
  const latitude = latitudeErrors(towns, reference, world);
  console.log(
    `latitude alone: RMS ${latitude.meanPercent.toFixed(1)} % and ${latitude.meanK.toFixed(1)} K of the means, ` +
      `${latitude.townPercent.toFixed(0)} % and ${latitude.townK.toFixed(1)} K at towns`,
  );
  if (!isCheck) writeFileSync(shipped, file);
  else if (!file.equals(readFileSync(shipped))) process.exitCode = 1;
}
