// Run by npm after an install (`postinstall`), by whatever Node is there; plain JavaScript for that. Takes out of
// node_modules what is never used: the headers and papers of the Node that is brought along. 66 MB of an install. What is
// not there is passed over, and nothing else is touched.
import { existsSync, lstatSync, readdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const ofNode = ['include', 'share', 'CHANGELOG.md', 'README.md'];

/** Whether it is a folder in its own place: what stands behind a link is somebody else's as well. */
const isOwn = folder => existsSync(folder) && lstatSync(folder).isDirectory();

/** What a folder that is ours holds; every folder on the way to it has to be ours too. */
const list = (...way) =>
  way.every((_, i) => isOwn(join(...way.slice(0, i + 1)))) ? readdirSync(join(...way)) : [];

const [modules] = process.argv.slice(2);
if (modules !== undefined) {
  const spare = [
    ...list(modules)
      .filter(name => /^node-(bin-)?(linux|darwin|win)-/.test(name))
      .flatMap(name =>
        list(modules, name)
          .filter(part => ofNode.includes(part))
          .map(part => join(modules, name, part)),
      ),
  ];
  for (const path of spare) rmSync(path, { recursive: true, force: true });
}
