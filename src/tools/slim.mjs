// Run by npm after an install (`postinstall`), by whatever Node is there; plain JavaScript for that. Takes out of
// node_modules what is never used: the headers and papers of the Node that is brought along, and the weights of the font
// that no picture draws. 75 MB of an install. What is not there is passed over, and nothing else is touched.
import { existsSync, lstatSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const drawn = new Set(['400Regular', '600SemiBold']);
const ofNode = ['include', 'share', 'CHANGELOG.md', 'README.md'];

/** What goes, below a folder of packages. */
export function spare(modules) {
  const list = folder => (existsSync(folder) ? readdirSync(folder) : []);
  const nodes = list(modules).filter(name => /^node-(bin-)?(linux|darwin|win)-/.test(name));
  const font = join(modules, '@expo-google-fonts', 'inter');
  return [
    ...nodes.flatMap(name => ofNode.map(part => join(modules, name, part))),
    ...list(font)
      .filter(name => /^\d00[A-Z]/.test(name) && !drawn.has(name))
      .map(name => join(font, name)),
  ].filter(path => existsSync(path));
}

const [folder] = process.argv.slice(2);
// A link leads to packages that others use as well.
if (folder !== undefined && existsSync(folder) && !lstatSync(folder).isSymbolicLink())
  for (const path of spare(folder)) rmSync(path, { recursive: true, force: true });
