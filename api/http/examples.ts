/** Reads the worked examples of openapi/examples, which the document shows and the demo posts. */
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the package, from the sources and from what is built of them alike. */
export function packageFolder(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, 'package.json'))) {
    const above = dirname(folder);
    if (above === folder) throw new Error('invariant: the package has no package.json');
    folder = above;
  }
  return folder;
}

export const exampleText = (file: string): string =>
  readFileSync(join(packageFolder(), 'openapi', 'examples', file), 'utf8');

/** A JSON example by its name without ending, such as `pump-canister-250`. */
export const example = (name: string): unknown => JSON.parse(exampleText(`${name}.json`));
