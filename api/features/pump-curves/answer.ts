/** Answers the curves of a pump. */

import type { z } from '@hono/zod-openapi';
import type { HeadCurve } from '../../../curves/head-curve.ts';
import { fittedExponent, type PowerLaw } from '../../../curves/power-law.ts';
import { fitCautions } from '../../../models/cautions/pump-fit.ts';
import { GRAVITY } from '../../../models/physics/gravity.ts';
import { bestEfficiencyPoint } from '../../../models/pump/best-efficiency.ts';
import { pumpAtSetting } from '../../../models/pump/pump-at-setting.ts';
import type { PumpModel } from '../../../models/pump/pump-model.ts';
import { basisOf } from '../../fields/basis.ts';
import type { WithoutUnits } from '../../http/answer-form.ts';
import { DEFAULT_DENSITY } from '../../units/schema-context.ts';
import type { curvesSchema } from './answer-schema.ts';

type CurvesAnswer = WithoutUnits<z.output<ReturnType<typeof curvesSchema>>>;

/** The table runs from no flow to the largest entered flow at the setting, in even steps. */
export function curvesAnswer(
  model: PumpModel,
  {
    id,
    version,
    setting,
    points,
  }: { readonly id: string; readonly version: number; readonly setting: number; readonly points: number },
): CurvesAnswer {
  const { headCurve, powerLaw } = model.fit;
  return {
    headFit: headFit(headCurve),
    powerFit: powerFit(powerLaw),
    bestEfficiencyPoint: bestEfficiencyPoint(model.fit, { density: DEFAULT_DENSITY }),
    table: curveTable(model, { setting, points }),
    cautions: [...fitCautions(model)],
    basis: basisOf({ loop: null, pumps: [{ id, version }] }),
  };
}

function headFit(curve: HeadCurve): CurvesAnswer['headFit'] {
  const { shape, flowScale, range, r2, standardError, residuals } = curve;
  return {
    shape,
    ...(curve.shape === 'piecewise'
      ? { knots: [...curve.knots] }
      : { exponents: [...curve.powers], coefficients: [...curve.coefficients] }),
    flowScale,
    range,
    ...(r2 === null ? {} : { r2 }),
    ...(standardError === null ? {} : { standardError }),
    residuals: [...residuals],
    ...(curve.shape === 'sum-of-powers' ? { leaveOneOut: curve.leaveOneOut } : {}),
  };
}

function powerFit(powerLaw: PowerLaw): CurvesAnswer['powerFit'] {
  const { law, fixedPower, coefficient, exponentAssumed, flowTerms, standbyPower } = powerLaw;
  const { flowScale, flowCentre, flowRange, r2, standardError } = powerLaw;
  return {
    law,
    fixedPower,
    exponent: fittedExponent(powerLaw),
    exponentAssumed,
    coefficient,
    flowTerms: [...flowTerms],
    ...(flowScale === null || flowCentre === null || flowRange === null
      ? {}
      : { flowScale, flowCentre, flowRange }),
    standbyPower,
    ...(r2 === null ? {} : { r2 }),
    ...(standardError === null ? {} : { standardError }),
  };
}

function curveTable(
  model: PumpModel,
  { setting, points }: { readonly setting: number; readonly points: number },
): CurvesAnswer['table'] {
  const pump = pumpAtSetting(model, { setting, count: 1 });
  return Array.from({ length: points }, (_, place) => {
    const flow = points === 1 ? pump.flowScale : (pump.flowScale * place) / (points - 1);
    const { head } = pump.headAt(flow);
    const power = pump.powerAt(flow);
    return { setting, flow, head, power, efficiency: (DEFAULT_DENSITY * GRAVITY * flow * head) / power };
  });
}
