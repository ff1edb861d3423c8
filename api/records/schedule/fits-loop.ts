/** Checks that a schedule fits its loop before it is stored. */
import type { CompiledLoop } from '../../../models/network/compiled-loop.ts';
import { hasRequirement } from '../../../models/network/margins.ts';
import { requiring, scaled, shutOutlets, stated } from '../../../models/schedule/phase-loop.ts';
import type { Phase, Schedule } from '../../../models/schedule/schedule.ts';
import { toPointer } from '../../http/json-pointer.ts';
import { invalidRequest, type Problem, type ProblemError } from '../../http/problem.ts';

/** Null where it fits. */
export function scheduleProblem({ phases, emergency }: Schedule, loop: CompiledLoop): Problem | null {
  const errors = phases.flatMap((phase, place) => faultsOf(phase, loop, ['phases', place]));
  if (emergency !== undefined && !hasRequirement(loop.system.outlets)) {
    errors.push({ pointer: '/emergency/factor', detail: 'scales the flows of a loop that requires none' });
  }
  return errors.length === 0 ? null : invalidRequest(errors);
}

function faultsOf(phase: Phase, loop: CompiledLoop, at: readonly (string | number)[]): ProblemError[] {
  const { outlets } = loop.system;
  const unknown = (['requiredFlows', 'openings'] as const).flatMap((member) =>
    Object.keys(phase[member] ?? {}).flatMap((name) =>
      outlets.some((outlet) => outlet.name === name)
        ? []
        : [{ pointer: toPointer([...at, member, name]), detail: 'names no outlet of the loop' }],
    ),
  );
  if (unknown.length > 0) return unknown;
  const shut = shutOutlets(phase);
  if (shut.length > 0 && loop.network === null) {
    const detail = 'can be closed only where the pipework of the loop is known';
    return [{ pointer: toPointer([...at, 'openings']), detail }];
  }
  if (phase.volume !== undefined) return [];
  const required = phase.requiredFlows === undefined ? scaled(1) : stated(phase.requiredFlows, 1);
  if (hasRequirement(requiring(loop, required, shut).system.outlets)) return [];
  const member = phase.requiredFlows === undefined ? 'factor' : 'requiredFlows';
  return [{ pointer: toPointer([...at, member]), detail: 'leaves no outlet that requires a flow' }];
}
