/** Puts the summary of a site into a few sentences. */
import type { SavingEntry } from '../../../models/site-summary/site-totals.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import type { SiteSummary } from './site-summary.ts';

export function siteSummarySentence(
  { site, totals, attention, pumps }: SiteSummary,
  system: UnitSystem,
): string {
  const { currency } = site.document;
  const counted = totals.loops - totals.withoutPump - totals.unsolved;
  if (counted === 0) return 'No loop with an installed pump is stored: there is nothing to sum up.';
  const cost =
    totals.annualCost === null ? 'no price is set' : `${sayNumber(totals.annualCost)} ${currency} a year`;
  const use = `${counted === 1 ? '1 loop draws' : `${counted} loops draw`} ${say(totals.power, 'power', system)}: ${say(totals.annualEnergy, 'energy', system)} a year, ${cost}.`;
  const states = stateWords(totals);
  const hours = ` Service and routine checks take ${sayNumber(attention.all.hours)} hours a year.`;
  const [first] = totals.savings;
  return `${use}${states}${hours}${first === undefined ? '' : savingWords(first, { currency, system, pumps })}`;
}

function stateWords({ short, above }: SiteSummary['totals']): string {
  const [worst] = short.worst;
  const shortOnes =
    worst === undefined
      ? ' None is short of flow'
      : ` Short of flow: ${short.count}, ${worst.loop.name} the most (${worst.outlet} gets ${sayNumber(100 * (1 + worst.margin))} % of its need)`;
  return `${shortOnes}; ${above.count} could be set lower and still serve.`;
}

function savingWords(
  { loop, candidate, setting, energySaved, costSaved }: SavingEntry,
  {
    currency,
    system,
    pumps,
  }: Pick<SiteSummary, 'pumps'> & { readonly currency: string; readonly system: UnitSystem },
): string {
  const pump = candidate === null ? undefined : pumps[candidate];
  const saved =
    costSaved === null ? say(energySaved, 'energy', system) : `${sayNumber(costSaved)} ${currency}`;
  const change =
    pump === undefined
      ? `${loop.name} at setting ${sayNumber(setting)} %`
      : `${pump.name} at setting ${sayNumber(setting)} % on ${loop.name}`;
  return ` The largest saving: ${change}, ${saved} a year.`;
}
