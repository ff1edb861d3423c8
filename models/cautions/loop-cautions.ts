/** The cautions that hold for a loop whatever its pump: people, animals, water on the floor, service. */
import { drainBack } from '../hazards/drain-back.ts';
import type { Intake, Loop } from '../loop/loop.ts';
import { serviceLacks } from '../loop/serviceability.ts';
import type { LoopModel } from '../network/loop-model.ts';
import { about } from './about.ts';
import { type Caution, caution } from './catalogue.ts';
import { entrapment } from './entrapment.ts';
import { openingCautions } from './opening-cautions.ts';

export function loopCautions({ loop, network }: LoopModel): readonly Caution[] {
  const lift = 'systemCurve' in loop ? (loop.systemCurve.staticHead ?? 0) : loop.staticHead;
  const runs = network === null ? [] : [network.suction, ...network.branches.map(({ elements }) => elements)];
  const hasBulkhead = runs.some((elements) => elements.some(({ role }) => role === 'bulkhead'));
  return [
    caution('electricity-near-water'),
    ...(loop.intake?.reachable === false ? [] : [entrapment(loop.intake?.screen?.count)]),
    ...animalCautions(loop.intake),
    ...(loop.tank !== undefined || hasBulkhead ? [caution('bulkheads')] : []),
    ...(lift > 0 ? [caution('drain-back')] : []),
    ...(drainBack(loop)?.floods === true ? [caution('basin-floods')] : []),
    ...serviceCautions(loop),
    caution('estimate'),
  ];
}

function animalCautions(intake: Intake | undefined): readonly Caution[] {
  if (intake?.screen === undefined) return [caution('entrapment-animals')];
  return openingCautions(intake.screen, intake.smallestAnimal);
}

function serviceCautions(loop: Loop): readonly Caution[] {
  const lacks = serviceLacks(loop);
  if (lacks === null) return [];
  return [
    ...about('isolation-missing', lacks.isolation),
    ...about('union-missing', lacks.union),
    ...about('bulkhead-union-missing', lacks.bulkheadUnion),
  ];
}
