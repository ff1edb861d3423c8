/** The cheapest sizes, pump and setting of a loop by trying every combination, with laws of pumps and money of its own. */
import type { DesignBranch, DesignElement, DesignLoop, Pipe } from '../../../models/designs/design-loop.ts';
import type { Branch, PipeworkLoop, RunElement } from '../../../models/loop/loop.ts';
import type { RandomDesign } from '../../random/design-question.ts';
import type { PumpFigures } from '../../random/pump-figures.ts';
import { settingsGrid } from '../independent/speed.ts';
import { density, kinematicViscosity } from '../independent/water.ts';
import { circuitOf } from './legs.ts';
import { available } from './npsh.ts';
import { requiredHead } from './trims.ts';

/** Sizes by list, their required head [m], what the suction loses of it [m], what the pipes cost. */
export interface SizedPipework {
  readonly sizes: readonly number[];
  readonly head: number;
  readonly suctionLoss: number;
  readonly cost: number;
  /** Greatest velocity in any list [m/s]. */
  readonly velocity: number;
}

export interface EnumeratedDesign {
  readonly pump: number;
  readonly setting: number;
  readonly pipework: SizedPipework;
  readonly power: number;
  readonly head: number;
  readonly presentValue: number;
}

/** Replaces the lists one after another, as a reader meets them. */
function withSizes(loop: DesignLoop, sizes: readonly number[]): PipeworkLoop {
  const left = [...sizes];
  const sized = (element: DesignElement): RunElement => {
    if (!('pipes' in element)) return element;
    const pipe = element.pipes[left.shift() ?? -1];
    if (pipe === undefined) throw new Error('no such size');
    return { pipe, length: element.length };
  };
  const branchOf = ({ run, branches, ...rest }: DesignBranch): Branch => {
    const own = run.map(sized);
    return branches === undefined
      ? { ...rest, run: own }
      : { ...rest, run: own, branches: branches.map(branchOf) };
  };
  const suction = loop.suction.map(sized);
  return { ...loop, suction, discharge: branchOf(loop.discharge) };
}

interface List {
  readonly pipes: readonly Pipe[];
  readonly length: number;
  /** [m3/s] */
  readonly flow: number;
}

const requiredOf = ({ outlet, branches = [] }: DesignBranch): number =>
  outlet === undefined
    ? branches.reduce((sum, child) => sum + requiredOf(child), 0)
    : (outlet.requiredFlow ?? 0);

const listsIn = (run: readonly DesignElement[], flow: number): readonly List[] =>
  run.flatMap((element) => ('pipes' in element ? [{ ...element, flow }] : []));

const listsBelow = (branch: DesignBranch): readonly List[] => [
  ...listsIn(branch.run, requiredOf(branch)),
  ...(branch.branches ?? []).flatMap(listsBelow),
];

const boreOf = (pipe: Pipe): number => {
  if (typeof pipe === 'string') throw new Error('sizes are stated by their bores here');
  return pipe.insideDiameter;
};

/** Every combination, the last list counting fastest. */
const combinations = (lists: readonly List[]): readonly (readonly number[])[] =>
  lists.reduce<readonly (readonly number[])[]>(
    (before, { pipes }) => before.flatMap((sizes) => pipes.map((_, place) => [...sizes, place])),
    [[]],
  );

/** All pipework of a question. */
export function enumeratedPipework({ loop, prices }: RandomDesign): readonly SizedPipework[] {
  const viscosity = kinematicViscosity(loop.water);
  const flow = requiredOf(loop.discharge);
  const lists = [...listsIn(loop.suction, flow), ...listsBelow(loop.discharge)];
  return combinations(lists).map((sizes) => {
    const circuit = circuitOf({ ...withSizes(loop, sizes), viscosity });
    const chosen = lists.map((list, place) => ({ ...list, pipe: list.pipes[sizes[place] ?? -1] ?? '' }));
    return {
      sizes,
      head: requiredHead(circuit),
      suctionLoss: circuit.suction(flow),
      cost: chosen.reduce(
        (sum, { pipe, length }) =>
          sum + length * (prices.find((one) => boreOf(one.pipe) === boreOf(pipe))?.price ?? Number.NaN),
        0,
      ),
      velocity: Math.max(
        0,
        ...chosen.map(({ pipe, flow: own }) => own / ((Math.PI / 4) * boreOf(pipe) ** 2)),
      ),
    };
  });
}

const count = ({ branches = [] }: DesignBranch): number =>
  branches.reduce((sum, child) => sum + count(child), Math.max(0, branches.length - 1));

/** Present value of buying pumps of a life again and again, with what is left of the last one. */
function purchases(price: number, lifeYears: number, terms: RandomDesign): number {
  const worth = (year: number): number => ((1 + terms.inflation) / (1 + terms.discountRate)) ** year;
  let sum = 0;
  let bought = 0;
  for (let year = 0; year < terms.years; year += lifeYears) {
    sum += price * worth(year);
    bought = year;
  }
  const unused = (bought + lifeYears - terms.years) / lifeYears;
  return sum - price * unused * worth(terms.years);
}

function energyCost(power: number, pump: PumpFigures, terms: RandomDesign): number {
  const { hoursPerDay, price, years, energyInflation, discountRate } = terms;
  const wattHours = hoursPerDay * power + (24 - hoursPerDay) * pump.count * pump.standby;
  let sum = 0;
  for (let year = 1; year <= years; year += 1) {
    sum += ((365 * wattHours) / 1000) * price * ((1 + energyInflation) / (1 + discountRate)) ** year;
  }
  return sum;
}

/** Every design whose conditions hold: efficiency to 0.85, flow to 1.1 of the largest, the pump's least flow, NPSH where enforced. */
export function enumeratedDesigns(
  question: RandomDesign,
  pipework: readonly SizedPipework[],
): readonly EnumeratedDesign[] {
  const { loop, pumps, pipeVelocity, enforceNpsh, trimPrice } = question;
  const flow = requiredOf(loop.discharge);
  const water = density(loop.water);
  const { temperature } = loop.water;
  const suction = { density: water, pumpElevation: loop.pumpElevation, velocityHead: 0 };
  const slow = pipework.filter(({ velocity }) => pipeVelocity === null || velocity <= pipeVelocity);
  const trims = trimPrice * (1 + count(loop.discharge));
  return pumps.flatMap((pump, place) => {
    if (pump.price === null) return [];
    const bought = purchases(pump.count * pump.price, pump.lifeYears, question);
    return settingsGrid(pump.settings).flatMap((setting) => {
      const ratio = setting / 100;
      const full = flow / (pump.count * ratio);
      if (full > 1.1 * pump.largest || full < (pump.least ?? 0)) return [];
      const head = ratio ** 2 * headAt(pump, full);
      const power = pump.count * (pump.standby + pump.power * ratio ** 3);
      if ((water * 9.80665 * flow * head) / power > 0.85) return [];
      const fixed = bought + energyCost(power, pump, question) + trims;
      const needed = Math.max(ratio, 0.8) ** 2 * npshAt(pump, full);
      return slow.flatMap((one): readonly EnumeratedDesign[] => {
        const spare =
          available({ ...suction, loss: one.suctionLoss }, { temperature, elevation: 0 }) - needed;
        if (one.head > head || (enforceNpsh && spare < 0)) return [];
        return [{ pump: place, setting, pipework: one, power, head, presentValue: fixed + one.cost }];
      });
    });
  });
}

/** Beyond the largest entered flow the curve is its tangent. */
function headAt({ largest, shutoff, head }: PumpFigures, flow: number): number {
  const share = flow / largest;
  return share <= 1 ? shutoff - (shutoff - head) * share ** 2 : head - 2 * (shutoff - head) * (share - 1);
}

const npshAt = ({ npsh, largest }: PumpFigures, flow: number): number =>
  npsh === null ? 0 : npsh.atRest + ((npsh.atLargest - npsh.atRest) * flow) / largest;
