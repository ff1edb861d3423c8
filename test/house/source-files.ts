/** The source files of the project, as the tests of the house look at them. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { packageFolder } from '../../api/http/examples.ts';

export interface SourceFile {
  /** From the folder of the project on. */
  readonly path: string;
  readonly text: string;
}

export function sourceFiles(...folders: readonly string[]): readonly SourceFile[] {
  const root = packageFolder();
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
      .map((entry) => {
        const path = join(entry.parentPath, entry.name);
        return { path: path.slice(root.length + 1), text: readFileSync(path, 'utf8') };
      }),
  );
}
