/** What each pump offers at each of its settings: the head that it gives the required flow, and what that costs over the years. */
import type { DutyFigures } from '../duty/duty-point.ts';
import { figuresAt } from '../duty/duty-point.ts';
import { annualUse } from '../duty/energy.ts';
import type { Limits } from '../loop/limits.ts';
import type { LifeCycleTerms } from '../money/candidate-life-cycle.ts';
import { annuity } from '../money/terms.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { type PumpAtSetting, pumpAtSetting } from '../pump/pump-at-setting.ts';
import { gridSize, settingAt } from '../pump/settings-grid.ts';
import { criteriaFor, npshFigures } from '../selection/criteria.ts';
import type { CriterionReason, Judgement } from '../selection/criterion.ts';
import type { Gravity } from '../selection/gravity.ts';
import type { Candidate } from '../selection/select.ts';

export interface Offer extends EnergyOfYears {
  /** [-] */
  readonly candidate: number;
  readonly pump: PumpAtSetting;
  /** [m] at the required flow. */
  readonly head: number;
  /** [W] */
  readonly power: number;
  /** The most that the suction may lose [m]; infinite where NPSH is not enforced. */
  readonly suctionLoss: number;
  /** Whether the pump surely runs at the required flow: at no lower flow does it give less head. */
  readonly runsThere: boolean;
  /** The criteria at this duty, those of the pipework apart. */
  readonly judgements: readonly Judgement[];
}

/** Criteria that depend on the sizes: these are met by the choice of pipework, or not at all. */
const BY_PIPEWORK: ReadonlySet<CriterionReason> = new Set(['not-enough-head', 'npsh']);

export interface OfferTerms {
  /** With any of the candidate sizes: its water, outlets and intake alone count. */
  readonly loop: CompiledLoop;
  /** [m3/s] */
  readonly flow: number;
  readonly limits: Limits;
  /** [m] */
  readonly elevation: number;
  /** [money/kWh] */
  readonly price: number;
  /** [h] */
  readonly hoursPerDay: number;
  readonly lifeCycle: LifeCycleTerms;
  /** What runs without a pump with some of the sizes; null where none of them serves by gravity alone. */
  readonly gravity: Gravity | null;
}

/** kWh and money a year, and the present value of the energy of all years. */
export interface EnergyOfYears {
  /** [kWh] */
  readonly annualEnergy: number;
  /** [money] */
  readonly annualCost: number;
  /** [money] */
  readonly energyCost: number;
}

/** Of a power [W] of a candidate's pumps, standby in the hours that they rest. */
export function energyOfYears(
  { pump, count }: Candidate,
  { hoursPerDay, price, lifeCycle }: Pick<OfferTerms, 'hoursPerDay' | 'price' | 'lifeCycle'>,
): (power: number) => EnergyOfYears {
  const { years, energyInflation: rise, discountRate } = lifeCycle;
  const worthOfYear = annuity({ years, rise, discountRate });
  const standbyPower = count * pump.entered.standbyPower;
  return (power) => {
    const { annualEnergy } = annualUse({ power, standbyPower, hoursPerDay, price });
    const annualCost = annualEnergy * price;
    return { annualEnergy, annualCost, energyCost: worthOfYear * annualCost };
  };
}

/** The pump at each setting of its grid, the lowest first. */
export const settingsOf = ({ pump, count }: Candidate): readonly PumpAtSetting[] =>
  Array.from({ length: gridSize(pump.entered.settings) }, (_, index) =>
    pumpAtSetting(pump, { setting: settingAt(pump.entered.settings, index), count }),
  );

/** The greatest head [m] that any candidate gives the flow [m3/s]. */
export function greatestHead(candidates: readonly Candidate[], flow: number): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const candidate of candidates) {
    for (const pump of settingsOf(candidate)) most = Math.max(most, pump.headAt(flow).head);
  }
  return most;
}

/** The offers of one candidate, `place` [-] in the request, at every setting, whether its criteria hold there or not. */
export function offersOf(
  candidate: Candidate,
  place: number,
  { loop, flow, limits, elevation, gravity, ...terms }: OfferTerms,
): readonly Offer[] {
  const context = { loop, pump: candidate.pump, limits, elevation, gravity };
  const criteria = criteriaFor(context).filter(({ reason }) => !BY_PIPEWORK.has(reason));
  const npshAt = npshFigures(context);
  const outletFlows = loop.system.outlets.map(({ requiredFlow }) => requiredFlow ?? 0);
  const energyOf = energyOfYears(candidate, terms);
  return settingsOf(candidate).map((pump) => {
    const { head } = pump.headAt(flow);
    const duty = figuresAt(loop, pump, { flow, head, suctionLoss: 0, outletFlows });
    const { power } = duty;
    return {
      ...{ candidate: place, pump, head, power },
      ...energyOf(power),
      suctionLoss: limits.enforceNpsh ? npshToSpare(npshAt, duty) : Number.POSITIVE_INFINITY,
      runsThere: runsAt(pump, flow),
      judgements: criteria.map((one) => one.judge(duty)),
    };
  });
}

/** What NPSH available exceeds NPSH required by where the suction loses nothing [m]. */
function npshToSpare(npshAt: ReturnType<typeof npshFigures>, duty: DutyFigures): number {
  const { available, required } = npshAt(duty);
  return available - (required ?? 0);
}

/** A system whose head rises with flow meets the pump there first, coming from rest, where the pump gives no less before. */
function runsAt(pump: PumpAtSetting, flow: number): boolean {
  const { head } = pump.headAt(flow);
  return [0, ...pump.turningFlows.filter((turn) => turn < flow)].every(
    (before) => pump.headAt(before).head >= head,
  );
}
