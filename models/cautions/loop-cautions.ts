/** Gathers the cautions that hold for a loop whatever its pump: people, animals, water on the floor, service. */
import type { LoopModel } from '../network/loop-model.ts';
import type { Caution } from './catalogue.ts';
import { buildCautions, INSTALLATION } from './installation.ts';
import { intakeCautions } from './intake.ts';

/** Cautions about wiring, intake and pipework, then that the figures are estimates. */
export function loopCautions(model: LoopModel): readonly Caution[] {
  return [
    INSTALLATION.give('electricity-near-water'),
    ...intakeCautions(model.loop.intake),
    ...buildCautions(model),
    INSTALLATION.give('estimate'),
  ];
}
