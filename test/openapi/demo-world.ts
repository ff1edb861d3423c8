/** The demo's pumps and loops, made ready for computing. */

import { at } from '../../curves/at.ts';
import { type DutyPoint, dutyPoint } from '../../models/duty/duty-point.ts';
import { DEFAULT_LIMITS, type Limits } from '../../models/loop/limits.ts';
import { type CompiledLoop, compileLoop } from '../../models/network/compiled-loop.ts';
import { pumpAtSetting } from '../../models/pump/pump-at-setting.ts';
import { fitPump, type PumpModel } from '../../models/pump/pump-model.ts';
import { balancedLoop } from '../../models/selection/balanced-loop.ts';
import type { Balancing } from '../../models/selection/options.ts';
import { type Candidate, type Ranked, type Selection, select } from '../../models/selection/select.ts';
import { expectValue } from '../curves/expect-value.ts';
import { exampleJson, loopExample, pumpExample } from './read-example.ts';

const LITRES_PER_HOUR = 3.6e6;

/** What the demo reads: which files, and which pump is installed where. */
export interface Manifest {
  readonly site: string;
  readonly pumps: readonly string[];
  readonly loops: readonly {
    readonly loop: string;
    readonly installed: { readonly pump: string; readonly count: number; readonly setting: number };
  }[];
}

export const manifest: Manifest = exampleJson('demo.json');

const { elevation, price }: { elevation: number; price: number } = exampleJson(manifest.site);

export function pumpModel(file: string, system: 'metric' | 'us' = 'metric'): PumpModel {
  const pump = pumpExample(file, system);
  return { entered: pump, fit: expectValue(fitPump(pump)) };
}

export const loopModel = (file: string, system: 'metric' | 'us' = 'metric'): CompiledLoop =>
  expectValue(compileLoop(loopExample(file, system)));

/** Every pump once, and the three small ones together. */
export const candidates: readonly Candidate[] = [
  ...manifest.pumps.map((file) => ({ pump: pumpModel(file), count: 1 })),
  { pump: pumpModel('pump-inline-60.json'), count: 3 },
];

/** The pump that the demo installs on a loop, at its setting. */
export function installedDuty(file: string): DutyPoint {
  const found = manifest.loops.find(({ loop }) => loop === file);
  if (found === undefined) throw new Error(`${file} has no installed pump`);
  const { pump, count, setting } = found.installed;
  return dutyPoint(loopModel(file), pumpAtSetting(pumpModel(pump), { setting, count }));
}

export function selectionFor(
  file: string,
  {
    limits = {},
    balancing = 'as-built',
  }: { readonly limits?: Partial<Limits>; readonly balancing?: Balancing } = {},
): Selection {
  const { sampled } = expectValue(balancedLoop(loopModel(file), balancing));
  const running = { price, hoursPerDay: 24, elevation };
  return select({ sampled, candidates, limits: { ...DEFAULT_LIMITS, ...limits }, running });
}

/** The answer for one candidate by name and count; undefined where it was rejected. */
export const rankedFor = (selection: Selection, name: string, count = 1): Ranked | undefined =>
  selection.ranking.find(({ candidate }) => nameOf(candidate) === name && countOf(candidate) === count);

export const nameOf = (candidate: number): string | undefined => candidates[candidate]?.pump.entered.name;
const countOf = (candidate: number): number | undefined => candidates[candidate]?.count;

export function bestOf({ ranking: [best] }: Selection): Ranked & { readonly name: string | undefined } {
  if (best === undefined) throw new Error('no pump serves the loop');
  return { ...best, name: nameOf(best.candidate) };
}

/** L/h at an outlet of a loop. */
export function litresPerHour(
  file: string,
  duty: { readonly outletFlows: readonly number[] },
  name: string,
): number {
  const index = loopModel(file).system.outlets.findIndex((outlet) => outlet.name === name);
  return at(duty.outletFlows, index) * LITRES_PER_HOUR;
}
