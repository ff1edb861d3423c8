/** One duty point against a general least-squares solver on the same equations. */
import { levenbergMarquardt } from 'ml-levenberg-marquardt';
import { dutyPoint } from '../../models/duty/duty-point.ts';
import { compileLoop } from '../../models/network/compiled-loop.ts';
import { pumpAtSetting } from '../../models/pump/pump-at-setting.ts';
import { expectValue } from '../curves/expect-value.ts';
import { agree } from './agree.ts';
import { type BenchRow, benchRow } from './bench-row.ts';
import { networkEquations } from './network-equations.ts';
import { takeTurns } from './take-turns.ts';
import { thousandPumps } from './thousand-pumps.ts';
import { twelveOutlets } from './twelve-outlets.ts';

const ROUNDS = 11;
/** A duty above what the loop requires. */
const PUMP = 3;
const SETTING = 90;
/** Sum of squared residuals [m2 and (L/s)2]: flows to about 1e-8. */
const ERROR_TOLERANCE = 1e-15;
/** Of flows in L/s and heads in m, for slopes by differences. */
const DIFFERENCE = 1e-6;
const MOST_ITERATIONS = 1000;

export async function leastSquaresBench(): Promise<readonly BenchRow[]> {
  const loop = expectValue(compileLoop(twelveOutlets));
  const { network } = loop;
  const model = thousandPumps()[PUMP];
  if (network === null || model === undefined) throw new Error('the case has no pipework or no pump');
  const pump = pumpAtSetting(model, { setting: SETTING, count: 1 });
  const equations = networkEquations(network, pump);
  const places = Array.from({ length: equations.count }, (_, place) => place);
  const data = { x: places, y: places.map(() => 0) };
  const general = () =>
    levenbergMarquardt(
      data,
      (unknowns) => {
        const residuals = equations.residuals(unknowns);
        return (place) => residuals[place] ?? Number.NaN;
      },
      {
        initialValues: equations.start(pump.flowScale / 2),
        gradientDifference: DIFFERENCE,
        errorTolerance: ERROR_TOLERANCE,
        maxIterations: MOST_ITERATIONS,
      },
    );
  const ours = () => dutyPoint(loop, pump);
  const { parameterValues, iterations } = general();
  const { outletFlows, flow, head } = ours();
  for (const [place, branch] of network.outlets.entries()) {
    agree(outletFlows[place], (parameterValues[branch] ?? Number.NaN) / 1000, 1e-6);
  }
  const turns = takeTurns({ first: ours, second: general, rounds: ROUNDS, firstRuns: 200, secondRuns: 4 });
  const { first, second, ratio } = turns;
  return [
    benchRow({
      name: 'one duty point / general least squares, 12 outlets',
      ratio,
      limit: { atMost: 1 / 20 },
      detail: `duty point ${(1000 * first).toFixed(0)} us (${(3600 * flow).toFixed(2)} m3/h at ${head.toFixed(2)} m), least squares ${(1000 * second).toFixed(0)} us (${equations.count} equations, ${iterations} iterations), flows equal within 1e-6`,
    }),
  ];
}
