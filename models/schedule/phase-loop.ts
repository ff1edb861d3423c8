/** Makes a loop as one phase runs it: some outlets closed, its own required flows. */
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

/** Every outlet requires `factor` [-] times what it requires of the loop. */
export const scaled =
  (factor: number): Requirement =>
  ({ requiredFlow }) =>
    requiredFlow === null ? null : factor * requiredFlow;

/** The outlets named require `factor` [-] times the flows stated [m3/s], the others what they require of the loop. */
export const stated =
  (flows: Readonly<Record<string, number>>, factor: number): Requirement =>
  ({ name, requiredFlow }) => {
    const flow = Object.hasOwn(flows, name) ? (flows[name] ?? null) : requiredFlow;
    return flow === null ? null : factor * flow;
  };

/** No outlet requires anything. */
export const nothing: Requirement = () => null;

/** The loop with the requirements of a phase; what is shut requires nothing. */
export function requiring(loop: CompiledLoop, required: Requirement, shut: readonly string[]): CompiledLoop {
  const outlets = loop.system.outlets.map((outlet) => ({
    ...outlet,
    requiredFlow: shut.includes(outlet.name) ? null : required(outlet),
  }));
  return { ...loop, system: { ...loop.system, outlets } };
}
