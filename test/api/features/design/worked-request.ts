/** The worked designs as callers send them: flows in L/h, bores in mm. */
import { prices, type WorkedDesign } from '../../../reference/worked-designs.ts';
import type { Json } from '../../requests.ts';

/** From SI, by the names of members. */
const FACTORS: ReadonlyMap<string, number> = new Map([
  ['requiredFlow', 3.6e6],
  ['flow', 3.6e6],
  ['insideDiameter', 1000],
]);

function onWire(value: unknown, name = ''): unknown {
  if (typeof value === 'number') return Number((value * (FACTORS.get(name) ?? 1)).toPrecision(12));
  if (Array.isArray(value)) return value.map((item) => onWire(item, name));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([member, held]) => [member, onWire(held, member)]));
}

export function workedRequest({ loop, candidates, terms }: WorkedDesign): Json {
  const { pipeVelocity, ...money } = terms;
  return {
    ...{ loop: onWire(loop), pumps: onWire(candidates), pipePrices: onWire(prices), ...money },
    limits: { pipeVelocity },
  };
}
