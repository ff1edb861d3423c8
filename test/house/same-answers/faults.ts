/** What goes wrong with invented loops, pumps and meters. */
import type { Draw } from '../../random/draw.ts';
import { type Branch, type Loop, outletsOf, type Pump, type RunElement, scaledPump } from './invented.ts';
import type { Shown, Truth } from './shown.ts';

export const FAULTS = [
  'none',
  'clogged-intake',
  'clogged-discharge',
  'clogged-branch',
  'worn-pump',
  'slow-pump',
  'draws-more',
  'less-resistance',
  'pump-stopped',
  'meter-drift',
  'unit-slip',
] as const;

export type Fault = (typeof FAULTS)[number];

interface Sized {
  readonly fault: Fault;
  /** From just seen, 0, to serious, 1. */
  readonly size: number;
  /** What the healthy loop does. */
  readonly healthy: Shown;
}

const LITRE_PER_HOUR = 1 / 3.6e6;

/** Loses a share of the healthy head at a healthy flow. */
const clog = (share: number, { totals }: Shown, flow = totals.flow ?? 0): RunElement => ({
  loss: { head: share * (totals.head ?? 0), flow: Math.max(flow, 1) * LITRE_PER_HOUR },
});

function clogged(branch: Branch, name: string, element: RunElement): Branch {
  const run = branch.outlet?.name === name ? [...branch.run, element] : branch.run;
  const branches = branch.branches?.map((below) => clogged(below, name, element));
  return { ...branch, run, ...(branches === undefined ? {} : { branches }) };
}

function faultyLoop(loop: Loop, draw: Draw, { fault, size, healthy }: Sized): Loop {
  const share = 0.1 + 1.4 * size;
  const { discharge } = loop;
  switch (fault) {
    case 'clogged-intake':
      return { ...loop, suction: [...loop.suction, clog(share, healthy)] };
    case 'clogged-discharge':
      return { ...loop, discharge: { ...discharge, run: [...discharge.run, clog(share, healthy)] } };
    case 'clogged-branch': {
      const { name } = draw.pick(outletsOf(discharge));
      const element = clog(share, healthy, healthy.outletFlows[name]);
      return { ...loop, discharge: clogged(discharge, name, element) };
    }
    case 'less-resistance':
      return { ...loop, frictionMultiplier: loop.frictionMultiplier * (1 - 0.6 * size) };
    default:
      return loop;
  }
}

function faultyPump(pump: Pump, { fault, size }: Sized): Pump {
  const { name } = pump;
  switch (fault) {
    case 'worn-pump': {
      const headPoints = pump.headPoints.map((one) => ({ ...one, head: one.head * (1 - 0.4 * size) }));
      return { ...pump, headPoints };
    }
    case 'slow-pump':
      return scaledPump(pump, { name, flow: 1 - 0.2 * size, head: (1 - 0.2 * size) ** 2 });
    case 'draws-more': {
      const powerPoints = pump.powerPoints.map((one) => ({ ...one, power: one.power * (1 + 0.5 * size) }));
      return { ...pump, powerPoints };
    }
    default:
      return pump;
  }
}

/** The loop and its pumps once the fault is there; of several pumps one stops. */
export const faulty = ({ loop, pump, count }: Truth, draw: Draw, sized: Sized): Truth => ({
  loop: faultyLoop(loop, draw, sized),
  pump: faultyPump(pump, sized),
  count: sized.fault === 'pump-stopped' && count > 1 ? count - 1 : count,
});

/** One pump that stops leaves a trickle and its standby power. */
export const stopped = ({ totals, outletFlows }: Shown, { standbyPower }: Pump): Shown => ({
  totals: { ...totals, flow: 0.004 * (totals.flow ?? 0), head: 0.01, power: 1.02 * standbyPower + 0.1 },
  outletFlows: Object.fromEntries(Object.entries(outletFlows).map(([name, flow]) => [name, 0.004 * flow])),
});

const SLIPS: Readonly<Record<string, readonly number[]>> = {
  flow: [3.785, 4.546, 60, 16.67],
  power: [1000, 0.001],
  head: [3.281, 10.2],
};

/** What one of the meters is off by in the end, as a factor. */
export function meterGains(draw: Draw, { fault, size }: Omit<Sized, 'healthy'>, measures: readonly string[]) {
  const measure = draw.pick(measures.length > 0 ? measures : ['outletFlow']);
  if (fault === 'meter-drift') {
    return { [measure]: draw.chance(0.5) ? 1 + 0.4 * size : 1 - 0.3 * size };
  }
  if (fault === 'unit-slip') return { [measure]: draw.pick(SLIPS[measure] ?? [3.785]) };
  return {};
}
