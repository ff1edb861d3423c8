/** Puts the summary of a site into a few sentences. */
import type { SavingEntry } from '../../../models/site-summary/site-totals.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { sayAgainst } from '../../wording/against-limit.ts';
import { sayMoney } from '../../wording/money.ts';
import { say } from '../../wording/numbers-in-words.ts';
import { quoted } from '../../wording/quoted.ts';
import type { SiteSummary } from './site-summary.ts';

/** Of the figures in a sentence. */
const DIGITS = 3;

/** Energy [kWh] and money of a year; no money where nothing is priced. */
interface Annual {
  readonly energy: number;
  readonly cost: number | null;
}

/** Use, loops below required, what lower settings save, the largest saving beyond that. */
export function siteSummarySentence({ site, totals, pumps }: SiteSummary, system: UnitSystem): string {
  const { currency } = site.document;
  const counted = totals.loops - totals.withoutPump - totals.unsolved;
  if (counted === 0) return 'No loop with an installed pump is stored. There is nothing to sum.';
  const energy = say(totals.annualEnergy, 'energy', 'metric', DIGITS);
  const use = `${counted === 1 ? '1 loop uses' : `${counted} loops use`} ${energy}`;
  const cost =
    totals.annualCost === null
      ? ' per year, without a price.'
      : ` and ${sayMoney(totals.annualCost, currency)} per year.`;
  return [
    `${use}${cost}`,
    belowRequiredWords(totals, system),
    ...turnDownWords(totals, currency),
    ...furtherWords({ totals, pumps }, currency),
  ].join(' ');
}

function belowRequiredWords({ short }: SiteSummary['totals'], system: UnitSystem): string {
  const [worst] = short.worst;
  if (worst === undefined) return 'No loop is below required.';
  const said = sayAgainst({ value: worst.flow, stated: worst.requiredFlow }, 'flow', system);
  const most = `oop ${quoted(worst.loop.name)} is`;
  const which = short.count === 1 ? `L${most}` : `${short.count} loops are below required. L${most} furthest`;
  return `${which} below required at outlet ${quoted(worst.outlet)}: ${said.value}, required ${said.stated}.`;
}

const amount = ({ energy, cost }: Annual, currency: string): string =>
  cost === null ? say(energy, 'energy', 'metric', DIGITS) : sayMoney(cost, currency);

/** What lower settings save without anything bought; loops beyond those listed add to it. */
function turnDownWords({ above }: SiteSummary['totals'], currency: string): readonly string[] {
  if (above.count === 0) return [];
  const sum = above.most.reduce<Annual>(
    ({ energy, cost }, { energySaved, costSaved }) => ({
      energy: energy + energySaved,
      cost: cost === null || costSaved === null ? null : cost + costSaved,
    }),
    { energy: 0, cost: 0 },
  );
  const settings =
    above.count === 1 ? 'A lower setting on 1 loop saves' : `Lower settings on ${above.count} loops save`;
  const least = above.most.length < above.count ? 'at least ' : '';
  return [`${settings} ${least}${amount(sum, currency)} per year at no cost.`];
}

/** What another pump saves beyond a lower setting of the one that is there. */
const furtherSaving = ({ energySaved, costSaved, settingAlone }: SavingEntry): Annual => ({
  energy: energySaved - (settingAlone?.energySaved ?? 0),
  cost: costSaved === null ? null : costSaved - (settingAlone?.costSaved ?? 0),
});

const worth = ({ energy, cost }: Annual): number => cost ?? energy;

function furtherWords(
  { totals, pumps }: Pick<SiteSummary, 'totals' | 'pumps'>,
  currency: string,
): readonly string[] {
  const [most] = totals.savings
    .flatMap((entry) => (entry.candidate === null ? [] : [{ entry, further: furtherSaving(entry) }]))
    .filter(({ further }) => worth(further) > 0)
    .toSorted((a, b) => worth(b.further) - worth(a.further));
  if (most === undefined) return [];
  const { entry, further } = most;
  const pump = entry.candidate === null ? undefined : pumps[entry.candidate];
  if (pump === undefined) return [];
  const change = `pump ${quoted(pump.name)} on loop ${quoted(entry.loop.name)}`;
  return [`The largest further saving is ${amount(further, currency)} per year: ${change}.`];
}
