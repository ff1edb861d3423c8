/** The order of rooms: no circle among them, and a tool that refuses an import against their order. */
import { execFile } from 'node:child_process';
import { cp, mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { packageFolder } from '../../api/http/examples.ts';
import { arrowsOf, circleIn } from './rooms.ts';

describe('the rooms of the sources', () => {
  const arrows = arrowsOf('curves', 'models', 'api');
  const rooms = new Set(arrows.flatMap(({ from, to }) => [from, to]));

  it('know each other one way', () => {
    expect(circleIn(arrows)).toEqual([]);
  });

  it('are many, those of features and of stored kinds among them', () => {
    expect(rooms.size).toBeGreaterThan(60);
    for (const room of [
      'curves',
      'models/pump',
      'api/records/*',
      'api/records/pump',
      'api/features/spares',
      'api/*',
    ])
      expect(rooms).toContain(room);
  });
});

describe('the rooms of curves and models', () => {
  const arrows = arrowsOf('curves', 'models');

  it('are many, with arrows between them', () => {
    expect(new Set(arrows.flatMap(({ from, to }) => [from, to])).size).toBeGreaterThan(20);
    expect(arrows.length).toBeGreaterThan(60);
  });

  it('have no arrow to the API or to tests', () => {
    expect(arrows.filter(({ to }) => !/^(?:curves|models\/)/.test(to))).toEqual([]);
  });
});

describe('a circle of rooms', () => {
  it('is found wherever it begins', () => {
    const arrows = [
      { from: 'a', to: 'b' },
      { from: 'b', to: 'c' },
      { from: 'c', to: 'd' },
      { from: 'd', to: 'b' },
    ];
    expect(circleIn(arrows)).toEqual(['b', 'c', 'd', 'b']);
    expect(circleIn(arrows.slice(0, 3))).toEqual([]);
    expect(circleIn([{ from: 'a', to: 'a' }])).toEqual(['a', 'a']);
  });
});

/** Imports against the order, each with the rule that refuses it. */
const REFUSED = [
  {
    what: 'of a later room by an earlier one',
    file: 'models/physics/gravity.ts',
    imported: "import type {} from '../network/network.ts';",
    rule: 'order-of-models-physics',
  },
  {
    what: 'of each other by rooms of one line',
    file: 'models/network/margins.ts',
    imported: "import type {} from '../pump/pump.ts';",
    rule: 'order-of-models-network',
  },
  {
    what: 'of models by curves',
    file: 'curves/at.ts',
    imported: "import type {} from '../models/physics/gravity.ts';",
    rule: 'curves-import-nothing-of-ours',
  },
  {
    what: 'of the API by models',
    file: 'models/physics/gravity.ts',
    imported: "import type {} from '../../api/units/table.ts';",
    rule: 'models-import-curves-only',
  },
  {
    what: 'of a package by models',
    file: 'models/physics/gravity.ts',
    imported: "import type {} from 'zod';",
    rule: 'models-use-no-package',
  },
  {
    what: 'of a core module by curves',
    file: 'curves/at.ts',
    imported: "import {} from 'node:fs';",
    rule: 'curves-use-no-core-module',
  },
  {
    what: 'of each other by rooms of one line of the API',
    file: 'api/units/table.ts',
    imported: "import type {} from '../store/versions.ts';",
    rule: 'order-of-api-units',
  },
  {
    what: 'of types alone of a file that imports it back',
    file: 'api/units/scale.ts',
    imported: "import type {} from './table.ts';",
    rule: 'no-circle',
  },
  {
    what: 'of a file that imports it back',
    file: 'curves/result.ts',
    imported: "import './find-root.ts';",
    rule: 'no-circle',
  },
] as const;

describe('the tool that holds the order', () => {
  const root = packageFolder();
  let copy = '';

  /** What the tool prints, or what it prints of what it refuses. */
  async function layers(): Promise<string> {
    const program = join(root, 'node_modules', 'dependency-cruiser', 'bin', 'dependency-cruise.mjs');
    const config = join(root, '.dependency-cruiser.cjs');
    const run = promisify(execFile);
    try {
      const { stdout } = await run(
        process.execPath,
        [program, '--config', config, 'models', 'curves', 'api'],
        {
          cwd: copy,
        },
      );
      return stdout;
    } catch (error) {
      if (typeof error === 'object' && error !== null && 'stdout' in error) return String(error.stdout);
      throw error;
    }
  }

  beforeAll(async () => {
    copy = await mkdtemp(join(tmpdir(), 'rooms-'));
    const copied = [
      'curves',
      'models',
      'tsconfig.json',
      'package.json',
      'api/units/table.ts',
      'api/units/scale.ts',
      'api/store/versions.ts',
    ];
    for (const path of copied) {
      await cp(join(root, path), join(copy, path), { recursive: true });
    }
    await cp(join(root, 'node_modules', 'zod'), join(copy, 'node_modules', 'zod'), { recursive: true });
    for (const name of ['ml-matrix', 'ml-regression', 'ml-levenberg-marquardt']) {
      await cp(join(root, 'node_modules', name), join(copy, 'node_modules', name), { recursive: true });
    }
  });

  afterAll(() => rm(copy, { recursive: true, force: true }));

  it('finds nothing to refuse in the sources as they are', async () => {
    expect(await layers()).toContain('no dependency violations found');
  });

  describe('asked about sources with wrong imports', () => {
    let output = '';

    beforeAll(async () => {
      for (const { file, imported } of REFUSED) {
        const text = await readFile(join(copy, file), 'utf8');
        const header = text.indexOf('*/\n') + 3;
        await writeFile(join(copy, file), `${text.slice(0, header)}${imported}\n${text.slice(header)}`);
      }
      output = await layers();
    });

    // A circle is reported at whichever of its files is met first.
    it.each(REFUSED)('refuses one $what', ({ file, rule }) => {
      const at = rule === 'no-circle' ? `${dirname(file)}/` : file;
      expect(output.split('\n').filter((line) => line.includes(`${rule}: ${at}`))).not.toEqual([]);
    });
  });
});
