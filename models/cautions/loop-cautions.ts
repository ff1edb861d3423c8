/** Gathers the cautions that hold for a loop whatever its pump: people, animals, water on the floor, service. */
import type { CompiledLoop } from '../network/compiled-loop.ts';
import type { Caution } from './catalogue.ts';
import { buildCautions, INSTALLATION } from './installation.ts';
import { intakeCautions } from './intake.ts';

/** Cautions about wiring, intake and pipework, then that the figures are estimates. */
export function loopCautions(model: CompiledLoop): readonly Caution[] {
  return [
    INSTALLATION.give('electricity-near-water'),
    ...intakeCautions(model.entered.intake),
    ...buildCautions(model),
    INSTALLATION.give('estimate'),
  ];
}
