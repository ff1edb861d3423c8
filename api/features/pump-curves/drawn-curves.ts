/** Computes the curves of a pump at a setting as points for a chart, in SI. */

import { type PumpAtSetting, pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import { pumpEnds } from '../../../models/pump/pump-at-tolerance.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import { toleranceOf } from '../../../models/pump/tolerance-grades.ts';

export interface FlowPoint {
  readonly flow: number;
  readonly head: number;
  readonly power: number;
}

export interface HeadBand {
  readonly flow: number;
  readonly low: number;
  readonly high: number;
}

const STEPS = 60;

const evenly = (from: number, until: number): readonly number[] =>
  Array.from({ length: STEPS + 1 }, (_, step) => from + ((until - from) * step) / STEPS);

export const pumpPoints = (
  pump: PumpAtSetting,
  { from, until }: { readonly from: number; readonly until: number },
): readonly FlowPoint[] =>
  evenly(from, until).map((flow) => ({ flow, head: pump.headAt(flow).head, power: pump.powerAt(flow) }));

/** The interval of the pump's head by its grade, the scatter of its points and the shapes that they leave open; empty where nothing is open. */
export function headBand(
  model: PumpModel,
  { setting, count, until }: { readonly setting: number; readonly count: number; readonly until: number },
): readonly HeadBand[] {
  const { grade = null } = model.entered;
  const { standardError, shape } = model.fit.headCurve;
  if (grade === null && standardError === null && shape !== 'assumed') return [];
  const { low, high } = pumpEnds(toleranceOf(grade));
  const [least, most] = [low(model, { setting, count }), high(model, { setting, count })];
  return evenly(0, until).map((flow) => ({
    flow,
    low: Math.max(0, least.headAt(flow).head),
    high: Math.max(0, most.headAt(flow).head),
  }));
}

/** The largest entered flow of the pumps at a setting [m3/s]: beyond it their curves go on as tangents. */
export const dataEnd = (
  model: PumpModel,
  place: { readonly setting: number; readonly count: number },
): number => pumpAtSetting(model, place).flowScale;
