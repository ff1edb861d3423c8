/** A loop as one phase runs it: some outlets shut, its own required flows. */
import type { CompiledLoop } from '../network/compiled-loop.ts';
import type { SystemOutlet } from '../network/system.ts';
import type { Phase } from './schedule.ts';

/** Names of the outlets that a phase shuts, in a fixed order. */
export const shutOutlets = ({ openings }: Pick<Phase, 'openings'>): readonly string[] =>
  Object.entries(openings ?? {})
    .flatMap(([name, opening]) => (opening === 0 ? [name] : []))
    .toSorted();

/** The flow that an outlet requires in a phase, from that which it requires of the loop [m3/s]; null: none. */
export type Requirement = (outlet: SystemOutlet) => number | null;

export const scaled =
  (factor: number): Requirement =>
  ({ requiredFlow }) =>
    requiredFlow === null ? null : factor * requiredFlow;

export const stated =
  (flows: Readonly<Record<string, number>>, factor: number): Requirement =>
  ({ name, requiredFlow }) => {
    const flow = Object.hasOwn(flows, name) ? (flows[name] ?? null) : requiredFlow;
    return flow === null ? null : factor * flow;
  };

export const nothing: Requirement = () => null;

/** The loop with the requirements of a phase; what is shut requires nothing. */
export function requiring(loop: CompiledLoop, required: Requirement, shut: readonly string[]): CompiledLoop {
  const outlets = loop.system.outlets.map((outlet) => ({
    ...outlet,
    requiredFlow: shut.includes(outlet.name) ? null : required(outlet),
  }));
  return { ...loop, system: { ...loop.system, outlets } };
}
