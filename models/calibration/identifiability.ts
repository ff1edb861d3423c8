/** Whether friction and head can be told apart by what was measured. */
import type { Gauge } from './measured-rows.ts';

/** Largest condition number of the scaled Jacobian, and largest standard error of a factor and as its share, at which factors stand apart. */
export const SEPARATE = { conditionNumber: 1e3, standardError: 0.25 } as const;

const isFlow = ({ measure }: Gauge): boolean => measure === 'flow' || measure === 'outletFlow';

/** Whether a flow was measured: heads alone settle another combination of friction and head than their ratio. */
export const tellsRatio = (gauges: readonly Gauge[]): boolean => gauges.some(isFlow);

/** Heads at a flow and at none together tell the pump's apart from the loop's. */
const headsTellApart = (gauges: readonly Gauge[]): boolean => {
  const heads = gauges.filter(({ measure }) => measure === 'head');
  return heads.some(({ zeroFlow }) => zeroFlow) && heads.some(({ zeroFlow }) => !zeroFlow);
};

/**
 * Without static head flows fix only friction over head, whatever the settings: with flows there must be a head across the
 * pump, a head at no flow, or outlets shut at some of them and not at others; without flows, heads both at a flow and at none. With
 * static head flows at two settings do.
 */
export function maySeparate(gauges: readonly Gauge[], withStaticHead: boolean): boolean {
  const flows = gauges.filter(isFlow);
  if (flows.length === 0) return headsTellApart(gauges);
  const valves = new Set(flows.map(({ shut }) => JSON.stringify(shut)));
  const settings = new Set(flows.map(({ setting }) => setting));
  const hasHead = gauges.some(({ measure }) => measure === 'head');
  return hasHead || valves.size > 1 || (withStaticHead && settings.size > 1);
}
