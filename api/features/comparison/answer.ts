/** Answers a comparison from its figures. */

import { comparisonCautions } from '../../../models/cautions/money.ts';
import { breakEvenPrice, breakEvenValueAtRisk, type Rival } from '../../../models/money/break-even.ts';
import { type LifeCycle, lifeCycle } from '../../../models/money/life-cycle.ts';
import { yearlyCosts } from '../../../models/money/option-costs.ts';
import { payback } from '../../../models/money/payback.ts';
import { sensitivity } from '../../../models/money/sensitivity.ts';
import { pumpReference } from '../../question/candidates.ts';
import { recordReference } from '../../store/record-reference.ts';
import type { ComparisonFigures } from './answer-schema.ts';
import type { AssemblyFigures } from './assembly/assembly-figures.ts';
import type { ComparisonContext } from './context.ts';
import type { ComparisonSources } from './contract.ts';
import { comparisonNotes } from './notes.ts';
import type { OptionFigures } from './option-figures.ts';
import { comparisonSentence } from './sentence.ts';
import { comparisonBasis } from './sources.ts';

type OptionAnswer = ComparisonFigures['options'][number];
type AssemblyAnswer = OptionAnswer['assemblies'][number];

export function comparisonFigures(
  context: ComparisonContext,
  options: readonly OptionFigures[],
  sources: ComparisonSources,
): ComparisonFigures {
  const { terms, site, energyPrice, labourRate, minutesPerFailure } = context;
  const cycles = options.map(({ costs }) => lifeCycle(costs, terms));
  const answers = options.map((_, place) => optionAnswer(context, options, cycles, place));
  const cheapest = cheapestOf(answers.map((answer, place) => ({ ...answer, place })));
  const other = cheapestOf(answers.map((answer, place) => ({ ...answer, place })).slice(1));
  const compared = other === null ? undefined : answers[other];
  const rival = rivalOf(options, other);
  const currency = site.document.currency;
  return {
    currency,
    options: answers,
    cheapest,
    breakEvenPrice: compared?.breakEvenPrice ?? null,
    breakEvenValueAtRisk: compared?.breakEvenValueAtRisk ?? null,
    sensitivity: rival === null ? [] : [...sensitivity(rival, terms)],
    assumptions: {
      ...terms,
      ...{ labourRate, minutesPerFailure, price: energyPrice.price },
      tariff: energyPrice.tariff?.document.name ?? null,
      notes: [...comparisonNotes(context, options)],
    },
    summary: comparisonSentence(answers, { cheapest, years: terms.years, currency }),
    cautions: [...comparisonCautions({ countsRisk: options.some(({ asked }) => asked.risk !== undefined) })],
    basis: comparisonBasis(sources),
  };
}

function cheapestOf(
  answers: readonly (Pick<OptionAnswer, 'feasible' | 'presentValue'> & { readonly place: number })[],
): number | null {
  const [first] = answers
    .filter(({ feasible }) => feasible)
    .toSorted((a, b) => a.presentValue - b.presentValue);
  return first?.place ?? null;
}

function rivalOf(options: readonly OptionFigures[], place: number | null): Rival | null {
  const [reference] = options;
  const option = place === null ? undefined : options[place];
  return option === undefined || reference === undefined
    ? null
    : { option: option.costs, reference: reference.costs };
}

function optionAnswer(
  { terms }: ComparisonContext,
  options: readonly OptionFigures[],
  cycles: readonly LifeCycle[],
  place: number,
): OptionAnswer {
  const [option, cycle, first] = [options[place], cycles[place], cycles[0]];
  if (option === undefined || cycle === undefined || first === undefined) {
    throw new Error(`invariant: there is no option ${place}`);
  }
  const { asked, assemblies, costs, lossRange, energyRange } = option;
  const rival = place === 0 ? null : rivalOf(options, place);
  const presentAt = (energy: number) => lifeCycle({ ...costs, energy }, terms).presentValue;
  const ends = [presentAt(energyRange.low), presentAt(energyRange.high), cycle.presentValue];
  const { maintenance, downtime } = yearlyCosts(costs);
  return {
    name: asked.name,
    feasible: assemblies.every(({ running }) => running.feasible),
    presentValue: cycle.presentValue,
    range: { low: Math.min(...ends), high: Math.max(...ends) },
    elements: { ...cycle.elements },
    years: cycle.years.map(({ year, elements, total, presentValue, cumulated, discounted }) => ({
      ...{ year, total, presentValue, cumulated },
      running: discounted.running,
      elements: { ...elements },
    })),
    payback: place === 0 ? null : payback(cycle, first),
    breakEvenPrice: rival === null ? null : breakEvenPrice(rival, terms),
    breakEvenValueAtRisk: rival === null ? null : breakEvenValueAtRisk(rival, terms),
    annualEnergy: costs.energy,
    annualEnergyCost: costs.energy * costs.energyPrice,
    attention: {
      devices: assemblies.reduce((sum, { count, candidate }) => sum + (candidate === null ? 0 : count), 0),
      hours: costs.attentionHours,
      cost: maintenance,
    },
    expectedLoss: {
      value: downtime,
      low: costs.valueAtRisk * lossRange.low,
      high: costs.valueAtRisk * lossRange.high,
    },
    assemblies: assemblies.map(assemblyAnswer),
    cautions: dutyCautions(assemblies),
  };
}

function assemblyAnswer(one: AssemblyFigures): AssemblyAnswer {
  const { asked, found, candidate, count, running, failures, servedShare, attention } = one;
  const { setting, settingFrom, feasible, detail, power, annualEnergy, annualCost, duty } = running;
  return {
    loop: found === null ? null : recordReference({ ...found.loop, name: found.loop.document.name }),
    pump: candidate === null ? null : pumpReference(candidate),
    ...{ count, new: asked.new, setting, settingFrom, feasible, detail, power, annualEnergy, annualCost },
    servedShare: duty === null && count > 1 ? null : servedShare,
    failuresPerDeviceYear: failures,
    attentionHours: attention.hours,
    ...{ price: one.price, lifeYears: one.lifeYears, ageYears: one.ageYears },
  };
}

/** Each once, of all that it runs. */
function dutyCautions(assemblies: readonly AssemblyFigures[]): OptionAnswer['cautions'] {
  const all = assemblies.flatMap(({ running }) => running.duty?.cautions ?? []);
  const worth = all.filter(({ severity }) => severity !== 'note');
  return [...new Map(worth.map((one) => [`${one.code} ${one.detail}`, one])).values()];
}
