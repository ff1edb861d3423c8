/** Computes an option of a comparison: its assemblies, and its costs in today's money. */

import { setImmediate } from 'node:timers/promises';
import { type Result, success } from '../../../curves/result.ts';
import { type Attention, attentionOf } from '../../../models/maintenance/attention.ts';
import { taskWork } from '../../../models/maintenance/task.ts';
import type { DeviceAttention } from '../../../models/money/device-attention.ts';
import { type FailureMode, lossesPerYear, type RiskTerms } from '../../../models/money/expected-loss.ts';
import type { CostElement, ExtraCost, OptionCosts } from '../../../models/money/option-costs.ts';
import type { Problem } from '../../http/problem.ts';
import type { TaskChoice } from '../../records/task/contract.ts';
import { TASKS } from '../../records/task/kind.ts';
import { type AssemblyFigures, assemblyFigures } from './assembly/assembly-figures.ts';
import type { AskedAssembly } from './assembly/assembly-loop.ts';
import type { ComparisonContext } from './context.ts';
import type { ComparisonQuestion, EXTRA_KINDS } from './schema.ts';

export type AskedOption = ComparisonQuestion['options'][number];

export interface OptionFigures {
  readonly asked: AskedOption;
  readonly assemblies: readonly AssemblyFigures[];
  readonly costs: OptionCosts;
  /** Losses a year at the ends of the failure rates' intervals. */
  readonly lossRange: { readonly low: number; readonly high: number };
  /** kWh a year by the uncertainty of the curves. */
  readonly energyRange: { readonly low: number; readonly high: number };
}

/** Assemblies worked out so far, by what was asked. */
export type KnownAssemblies = Map<string, AssemblyFigures>;

const ELEMENT_OF_KIND = {
  pipework: 'purchase',
  installation: 'installation',
  operation: 'operation',
  environment: 'environment',
  disposal: 'disposal',
} as const satisfies Record<(typeof EXTRA_KINDS)[number], CostElement>;

export async function optionFigures(
  context: ComparisonContext,
  asked: AskedOption,
  { place, known }: { readonly place: number; readonly known: KnownAssemblies },
): Promise<Result<OptionFigures, Problem>> {
  const assemblies: AssemblyFigures[] = [];
  for (const [index, one] of asked.assemblies.entries()) {
    const found = await figuresOnce(context, one, { path: ['options', place, 'assemblies', index], known });
    if (!found.ok) return found;
    assemblies.push(found.value);
  }
  const losses = (rate: 'value' | 'low' | 'high') => lossesOf(asked, assemblies, rate);
  return success({
    asked,
    assemblies,
    costs: costsOf(context, asked, assemblies, {
      losses: losses('value'),
      checks: await optionChecks(context, assemblies),
    }),
    lossRange: { low: losses('low'), high: losses('high') },
    energyRange: { low: energyAt(assemblies, 'low'), high: energyAt(assemblies, 'high') },
  });
}

/** What is asked for again is not worked out again; before each that is, other requests have their turn. */
async function figuresOnce(
  context: ComparisonContext,
  asked: AskedAssembly,
  { path, known }: { readonly path: readonly (string | number)[]; readonly known: KnownAssemblies },
): Promise<Result<AssemblyFigures, Problem>> {
  const key = JSON.stringify(asked);
  const before = known.get(key);
  if (before !== undefined) return success(before);
  await setImmediate();
  const found = await assemblyFigures(context, asked, path);
  if (found.ok) known.set(key, found.value);
  return found;
}

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

function costsOf(
  { labourRate, energyPrice }: ComparisonContext,
  { extras, risk }: AskedOption,
  assemblies: readonly AssemblyFigures[],
  { losses, checks }: { readonly losses: number; readonly checks: Pick<DeviceAttention, 'hours' | 'parts'> },
): OptionCosts {
  const energy = sum(assemblies.map(({ running }) => running.annualEnergy));
  const cost = sum(assemblies.map(({ running }) => running.annualCost));
  return {
    devices: assemblies.map(({ price, lifeYears, ageYears, asked }) => ({
      price,
      lifeYears,
      ageYears,
      isNew: asked.new,
    })),
    energy,
    // Of schedules, what their hours cost in the mean.
    energyPrice: energy === 0 ? energyPrice.price : cost / energy,
    attentionHours: checks.hours + sum(assemblies.map(({ attention }) => attention.hours)),
    failureHours: sum(assemblies.map(({ attention }) => attention.failureHours)),
    labourRate,
    parts: checks.parts + sum(assemblies.map(({ attention }) => attention.parts)),
    extras: extras.map(
      ({ kind, cost: each, year, everyYears }): ExtraCost => ({
        element: ELEMENT_OF_KIND[kind],
        cost: each,
        year,
        everyYears,
      }),
    ),
    valueAtRisk: risk?.valueAtRisk ?? 0,
    lossesPerYear: losses,
  };
}

/** Every pump may fail by itself; how often at once is left out. */
function lossesOf(
  { risk }: AskedOption,
  assemblies: readonly AssemblyFigures[],
  rate: 'value' | 'low' | 'high',
): number {
  if (risk === undefined) return 0;
  const modes = assemblies.map(
    ({ asked, count, failures, servedShare }): FailureMode => ({
      rate: asked.riskShare * count * (failures?.[rate] ?? 0),
      servedShare,
    }),
  );
  const terms: RiskTerms = risk;
  return lossesPerYear(modes, terms);
}

const energyAt = (assemblies: readonly AssemblyFigures[], end: 'low' | 'high'): number =>
  sum(assemblies.map(({ running }) => running.energyRange?.[end] ?? running.annualEnergy));

/** A check of the wet end that a pump's own service covers counts once, as that service. */
interface Checked {
  readonly of: Pick<TaskChoice, 'loop' | 'pump'>;
  readonly isServiced: boolean;
}

function checkedBy(assemblies: readonly AssemblyFigures[]): readonly Checked[] {
  const all = new Map<string, Checked>();
  for (const { found, candidate } of assemblies) {
    const isServiced = candidate?.entered.service !== undefined;
    for (const { id } of found?.parts ?? []) {
      if (id !== null) all.set(`loop ${id}`, { of: { loop: id }, isServiced });
    }
    const pump = candidate?.id ?? null;
    if (pump !== null) all.set(`pump ${pump}`, { of: { pump }, isServiced });
  }
  return [...all.values()];
}

/** The routine checks of the loops and pumps of an option, each once: hours, and money for parts, a year. */
async function optionChecks(
  { store, labourRate }: ComparisonContext,
  assemblies: readonly AssemblyFigures[],
): Promise<Pick<Attention, 'hours' | 'parts'>> {
  const works = [];
  for (const { of, isServiced } of checkedBy(assemblies)) {
    const tasks = await store.of(TASKS).all({ ...of });
    for (const { document } of tasks.outcome === 'all' ? tasks.records : []) {
      if (document.kind !== 'wet-end-service' || !isServiced) works.push(taskWork(document));
    }
  }
  return attentionOf(works, labourRate);
}
