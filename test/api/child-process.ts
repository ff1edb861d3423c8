/** A TypeScript file of the project run by a process of its own. */
import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createRequire } from 'node:module';
import { fileURLToPath, pathToFileURL } from 'node:url';

const typescriptLoader = pathToFileURL(createRequire(import.meta.url).resolve('tsx')).href;
const root = fileURLToPath(new URL('../../', import.meta.url));

export interface Child {
  readonly process: ChildProcessWithoutNullStreams;
  /** All that was written to standard output until now. */
  output(): string;
  errors(): string;
  /** Resolves when the output holds the text; rejects when the process ends without it. */
  untilOutputHas(text: string): Promise<void>;
  /** The exit code, or the signal that ended it; both streams are read to their ends by then. */
  ended: Promise<number | string | null>;
}

interface ChildOptions {
  readonly cwd?: string;
  readonly env?: Readonly<Record<string, string>>;
}

/** `file` is relative to the root of the project. The environment holds nothing but PATH and what is given. */
export function runTypescript(
  file: string,
  parameters: readonly string[],
  options: ChildOptions = {},
): Child {
  const child = spawn(process.execPath, ['--import', typescriptLoader, `${root}${file}`, ...parameters], {
    cwd: options.cwd ?? root,
    env: { PATH: process.env.PATH ?? '', ...options.env },
  });
  let output = '';
  let errors = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    output += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    errors += text;
  });
  const ended = once(child, 'close').then(
    ([code, signal]: (number | string | null)[]) => code ?? signal ?? null,
  );
  return {
    process: child,
    output: () => output,
    errors: () => errors,
    ended,
    untilOutputHas: (text) =>
      new Promise((resolve, reject) => {
        const look = () => {
          if (output.includes(text)) resolve();
        };
        child.stdout.on('data', look);
        child.once('close', () => reject(new Error(`ended without "${text}": ${output}${errors}`)));
        look();
      }),
  };
}
