/** An option of a comparison: its assemblies, and its costs in today's money. */
import { setImmediate } from 'node:timers/promises';
import { type Result, success } from '../../../curves/result.ts';
import type { DeviceAttention } from '../../../models/money/device-attention.ts';
import { type FailureMode, lossesPerYear, type RiskTerms } from '../../../models/money/expected-loss.ts';
import type { CostElement, ExtraCost, OptionCosts } from '../../../models/money/option-costs.ts';
import type { Problem } from '../../http/problem.ts';
import { type AssemblyFigures, assemblyFigures } from './assembly/assembly-figures.ts';
import type { AskedAssembly } from './assembly/assembly-loop.ts';
import type { ComparisonContext } from './context.ts';
import { optionChecks } from './option-checks.ts';
import type { ComparisonQuestion, EXTRA_KINDS } from './schema.ts';

export type AskedOption = ComparisonQuestion['options'][number];

export interface OptionFigures {
  readonly asked: AskedOption;
  readonly assemblies: readonly AssemblyFigures[];
  readonly costs: OptionCosts;
  /** Losses a year at the ends of the failure rates' intervals. */
  readonly lossRange: { readonly low: number; readonly high: number };
  /** kWh a year by the doubt in the curves. */
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
