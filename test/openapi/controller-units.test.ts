/** The units for systemd and their guide against what they start. */
import { accessSync, constants, existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { SCRIPT } from './controller-bench.ts';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const read = (path: string): string => readFileSync(`${ROOT}${path}`, 'utf8');

/** The values of a setting of a unit. */
const valuesOf = (unit: string, name: string): readonly string[] =>
  [...read(`.deploy/${unit}`).matchAll(new RegExp(`^${name}=(.*)$`, 'gm'))].map(([, value]) => value ?? '');

const script = readFileSync(SCRIPT, 'utf8');
const defaultOf = (name: string): string =>
  new RegExp(`^${name}=\\$\\{${name}:-(.*)\\}$`, 'm').exec(script)?.[1] ?? '';
const variables = [...script.matchAll(/^([A-Z_]+)=\$\{\1:-/gm)].map(([, name]) => name);

it('the unit of the controller starts the script that is there', () => {
  const [started = ''] = valuesOf('controller@.service', 'ExecStart');
  const path = started.replace('/opt/loopwright/', ROOT);
  expect(path).toBe(SCRIPT);
  expect(() => accessSync(path, constants.X_OK)).not.toThrow();
});

it('the unit of the controller gives an instance its loop and a state of its own', () => {
  const environment = valuesOf('controller@.service', 'Environment');
  const [directory] = valuesOf('controller@.service', 'StateDirectory');
  expect(environment).toEqual(['LOOP=%i', `STATE=/var/lib/${directory}`]);
  expect(directory).toContain('%i');
});

it('the unit of the controller waits longer than the longest round and the wait for another run', () => {
  const [most = ''] = valuesOf('controller@.service', 'TimeoutStartSec');
  expect(Number(most)).toBeGreaterThan(2 * 5 * Number(defaultOf('TIMEOUT')));
});

it('the unit of the service starts what npm start starts, and waits for its end', () => {
  const { scripts } = JSON.parse(read('package.json'));
  const [started = ''] = valuesOf('loopwright.service', 'ExecStart');
  expect(`exec ${started.replace('/usr/bin/', '')}`).toBe(scripts.start);
  expect(Number(valuesOf('loopwright.service', 'TimeoutStopSec')[0])).toBeGreaterThan(10);
});

it('the guide and the README name variables of the script alone, and units that are there', () => {
  const guide = read('.deploy/README.md');
  const lines = guide.match(/^ {3}([A-Z_]+)=.*$/gm) ?? [];
  const crontabs = [guide, read('README.md')].map((text) => /^\* \* \* \* \* (.*)$/m.exec(text)?.[1] ?? '');
  const named = [...lines, ...crontabs].flatMap((text) =>
    [...text.matchAll(/\b([A-Z_]+)=/g)].map(([, name]) => name),
  );
  expect(named.length).toBeGreaterThan(10);
  expect(named.filter((name) => !variables.includes(name))).toEqual([]);
  for (const [, unit] of guide.matchAll(/\.deploy\/([\w@.-]+\.(?:service|timer))/g)) {
    expect(existsSync(`${ROOT}.deploy/${unit}`)).toBe(true);
  }
});
