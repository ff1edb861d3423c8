/** Puts a design into a few plain sentences. */
import { PERCENT } from '../../../curves/percent.ts';
import { listsOf } from '../../../models/designs/design-loop.ts';
import type { BestDesign } from '../../../models/designs/search-designs.ts';
import { toPointer } from '../../http/json-pointer.ts';
import type { UnitSystem } from '../../units/unit-system.ts';
import { afterDangers } from '../../wording/dangers.ts';
import { sayMoney } from '../../wording/money.ts';
import { say, sayNumber } from '../../wording/numbers-in-words.ts';
import { quoted } from '../../wording/quoted.ts';
import { pumpWords } from '../duty-point/pump-words.ts';
import { gravityWords } from '../duty-point/sentence.ts';
import type { DesignAnswer } from './answer-schema.ts';
import { candidateAt, type DesignFigures, type DesignWork } from './job.ts';
import { pipeWords } from './pipe-words.ts';

interface Facts {
  readonly figures: DesignFigures;
  readonly work: DesignWork;
  readonly currency: string;
  readonly system: UnitSystem;
  readonly rejected: DesignAnswer['rejected'];
}

type BestAnswer = NonNullable<DesignAnswer['best']>;

const DIGITS = 3;
/** Pipes named at most; more are counted. */
const NAMED_MOST = 3;

export function designSentence(best: BestAnswer | null, facts: Facts): string {
  const { figures, system } = facts;
  const gravity = gravityWords(figures.designs.gravity, system);
  return best === null ? `${gravity}${withoutDesign(facts)}` : `${gravity}${designWords(best, facts)}`;
}

function withoutDesign({ work: { loop }, rejected: [first] }: Facts): string {
  const on = `for loop ${quoted(loop.name)}`;
  if (first === undefined) return `There is no pump to judge ${on}: enter one first.`;
  return `No design is feasible ${on}. ${pumpOf(first)}: ${lowerFirst(first.detail)}`;
}

const pumpOf = (row: Parameters<typeof pumpWords>[0]): string => upperFirst(pumpWords(row));
const upperFirst = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
const lowerFirst = (text: string): string => `${text.charAt(0).toLowerCase()}${text.slice(1)}`;

function designWords(best: BestAnswer, facts: Facts): string {
  const { figures, currency, work } = facts;
  const where = `at ${sayNumber(best.setting)} % on loop ${quoted(work.loop.name)}`;
  const watts = say(best.power, 'power', 'metric', DIGITS);
  const energy = say(best.annualEnergy, 'energy', 'metric', DIGITS);
  const use = `${watts}, ${energy} and ${sayMoney(best.annualCost, currency)} per year`;
  const run = `Run ${pumpWords(best)} ${where}: ${use}.`;
  return [
    afterDangers([...best.cautions, ...figures.cautions], run),
    costWords(best, facts),
    provenWords(facts),
    firstSizesWords(best, facts),
    closeWords(facts),
    stepWords(best, figures),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

function costWords(best: BestAnswer, { currency, work }: Facts): string {
  const parts = [
    `pump ${sayMoney(best.pumpCost, currency)}`,
    `energy ${sayMoney(best.energyCost, currency)}`,
    `pipes ${sayMoney(best.pipeCost, currency)}`,
    `trims ${sayMoney(best.trimCost, currency)}`,
  ].join(', ');
  const { years } = work.lifeCycle;
  const over = years === 1 ? '1 year' : `${years} years`;
  return `The design costs ${sayMoney(best.presentValue, currency)} over ${over}: ${parts}.`;
}

function provenWords({ figures: { designs } }: Facts): string {
  const { optimalityGap } = designs;
  if (optimalityGap === 0) return 'No trimmed design of these sizes and pumps costs less.';
  const percent = sayNumber(PERCENT * optimalityGap, 2);
  return `No trimmed design of these sizes and pumps costs less by more than ${percent} %.`;
}

/** Against the first size of every list. */
function firstSizesWords(answered: BestAnswer, { figures, work, currency, system }: Facts): string {
  const { best } = figures.designs;
  if (best === null) return '';
  const changed = changedSizes(best, work, system);
  if (changed.length === 0) return '';
  const named = changed.slice(0, NAMED_MOST).join(', ');
  const more = changed.length > NAMED_MOST ? ` and ${changed.length - NAMED_MOST} more` : '';
  const { firstSizes } = best;
  const against = `In place of the first size of each list it has ${named}${more}`;
  if (firstSizes === null) return `${against}: with the first sizes no pump gives the head.`;
  const pipes = answered.pipeCost - firstSizes.pipeCost;
  const running = firstSizes.runningCost - (answered.pumpCost + answered.energyCost);
  return `${against}: the pipes cost ${sum(pipes, currency, ['more', 'less'])}, pump and energy ${sum(running, currency, ['less', 'more'])}.`;
}

const sum = (
  amount: number,
  currency: string,
  [above, below]: readonly [above: string, below: string],
): string => `${sayMoney(Math.abs(amount), currency)} ${amount < 0 ? below : above}`;

function changedSizes({ sizes }: BestDesign, { loop }: DesignWork, system: UnitSystem): readonly string[] {
  return listsOf(loop).flatMap(({ path, pipes }, list) => {
    const pipe = sizes[list] === 0 ? undefined : pipes[sizes[list] ?? 0];
    return pipe === undefined ? [] : [`${pipeWords(pipe, system)} at ${toPointer(path)}`];
  });
}

function closeWords({ figures: { best }, work }: Facts): string {
  const measure = best?.measure ?? null;
  if (best === null || measure === null) return '';
  const named = (candidate: number) => {
    const { count, entered: pump } = candidateAt(work, candidate);
    return pumpWords({ pump, count });
  };
  const more = best.closeTo.length > NAMED_MOST ? ` and ${best.closeTo.length - NAMED_MOST} more` : '';
  const others = `${best.closeTo.slice(0, NAMED_MOST).map(named).join(', ')}${more}`;
  return `It is too close to call against ${others}. Measure the power of ${named(measure.candidate)} at ${sayNumber(measure.setting)} %.`;
}

/** Where a recommendation on the loop takes another setting. */
function stepWords({ setting }: BestAnswer, { best }: DesignFigures): string {
  const other = best?.recommendedSetting ?? setting;
  if (other === setting) return '';
  return `A recommendation on this loop gives ${sayNumber(other)} %: at ${sayNumber(setting)} % each outlet has exactly its required flow, and rounding decides.`;
}
