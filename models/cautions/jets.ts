/** Gives the cautions about how far the streams of outlets reach. */
import { at } from '../../curves/at.ts';
import { type JetCautions, jetCautions } from '../components/jet.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { outletReaches } from '../network/outlet-reach.ts';
import { type CautionOf, topic } from './topic.ts';

export const JETS = topic({
  'jet-too-far': {
    severity: 'note',
    sentence: 'The stated reach is beyond 70 nozzle diameters, where the jet law is not established.',
    source: 'validity of the free-jet decay law, from memory',
  },
  'jet-laminar': {
    severity: 'note',
    sentence: 'The jet leaves at a Reynolds number below 3000, where the jet law does not hold.',
    source: 'validity of the free-jet decay law, from memory',
  },
  'jet-confined': {
    severity: 'note',
    sentence: "The jet widens to more than half of the tank's width or depth: walls slow it sooner.",
    source: 'validity of the free-jet decay law, from memory',
  },
});

/** Judges the reach that was asked for by its velocity [m/s], else the distance that an outlet states. */
export function reachCautions(
  loop: CompiledLoop,
  outletFlows: readonly number[],
  velocity: number | null,
): readonly CautionOf<typeof JETS>[] {
  const judged = judgedReaches(loop, outletFlows, velocity);
  const named = (isOf: (facts: JetCautions) => boolean) =>
    judged.flatMap(({ name, facts }) => (isOf(facts) ? [name] : []));
  return [
    ...JETS.about(
      'jet-too-far',
      named((facts) => facts.beyond70d),
    ),
    ...JETS.about(
      'jet-laminar',
      named((facts) => facts.reynoldsBelow3000),
    ),
    ...JETS.about(
      'jet-confined',
      named((facts) => facts.touchesWalls),
    ),
  ];
}

function judgedReaches(loop: CompiledLoop, outletFlows: readonly number[], velocity: number | null) {
  const { network } = loop;
  if (network === null) return [];
  const { kinematicViscosity, branches, outlets } = network;
  const { tank } = loop.entered;
  const reaches = outletReaches(loop, outletFlows, velocity);
  return outlets.flatMap((branch, i) => {
    const outlet = branches[branch]?.outlet;
    const distance = velocity === null ? outlet?.reach?.distance : reaches[i]?.distance;
    if (outlet === undefined || outlet === null || distance === undefined || distance === 0) return [];
    const { name, area, nozzleDiameter } = outlet;
    if (area === null || nozzleDiameter === null) return [];
    const exitVelocity = at(outletFlows, i) / area;
    const facts = jetCautions({ distance, nozzleDiameter, exitVelocity, kinematicViscosity, tank });
    return [{ name, facts }];
  });
}
