/** Lists every element of a loop with the head it takes and its share of the hydraulic power. */

import { at } from '../../curves/at.ts';
import type { DocumentPath } from '../loop/document-path.ts';
import type { CompiledLoop } from '../network/compiled-loop.ts';
import { headAtTee } from '../network/flows-at-tee.ts';
import type { Network, NetworkBranch, PlacedResistance } from '../network/network.ts';
import type { NetworkSolution } from '../network/solve-network.ts';
import type { SystemState } from '../network/system.ts';
import { GRAVITY } from '../physics/gravity.ts';

export type LossKind = PlacedResistance['kind'] | 'tee-branch' | 'lift' | 'system-curve';

/** An element and what it takes. */
export interface LossRow {
  readonly path: DocumentPath;
  readonly kind: LossKind;
  /** Table name of the element, or the outlet's own; null where it has none. */
  readonly name: string | null;
  /** That its velocity is taken in [m]; null without one. */
  readonly bore: number | null;
  /** Through it [m3/s]; negative where water runs backwards. */
  readonly flow: number;
  /** Taken from that flow [m]; negative where water runs backwards. */
  readonly head: number;
  /** rho g Q H of the row [W]; negative where water comes down. */
  readonly power: number;
  /** Of the hydraulic power of the pump [-]. */
  readonly share: number;
}

type Placed = Omit<LossRow, 'power' | 'share'>;

export interface LossList {
  /** rho g Q H of the pump [W]. */
  readonly hydraulicPower: number;
  /** In the order of the water: suction, then branches in preorder. */
  readonly rows: readonly LossRow[];
}

/**
 * The rows of a solved state of a loop.
 *
 * Losses and lifts along every path add up to the head of the pump, so that their powers add up to rho g Q H
 * (test/models/losses/loss-rows.test.ts).
 * A lift of 0 has no row.
 * @returns heads [m], flows [m3/s], powers [W]; null where the pump does no work on the water.
 */
export function lossRows(loop: CompiledLoop, state: SystemState): LossList | null {
  const perFlowAndHead = loop.water.density * GRAVITY;
  const hydraulicPower = perFlowAndHead * state.flow * state.head;
  if (!(hydraulicPower > 0)) return null;
  const placed =
    loop.network === null || state.network === null
      ? curveRows(loop, state)
      : networkRows(loop.network, state.flow, state.network);
  const rows = placed.map((row) => {
    const power = perFlowAndHead * row.flow * row.head;
    return { ...row, power, share: power / hydraulicPower };
  });
  return { hydraulicPower, rows };
}

function curveRows({ system }: CompiledLoop, { flow, head }: SystemState): readonly Placed[] {
  const staticHead = system.stateAt(0).head;
  const row = { name: null, bore: null, flow };
  return [
    ...liftRow({ ...row, path: ['systemCurve', 'staticHead'], head: staticHead }),
    { ...row, path: ['systemCurve'], kind: 'system-curve', head: head - staticHead },
  ];
}

const liftRow = (row: Omit<Placed, 'kind'>): readonly Placed[] =>
  row.head === 0 ? [] : [{ ...row, kind: 'lift' }];

function networkRows(
  { suction, branches }: Network,
  totalFlow: number,
  { flows }: NetworkSolution,
): readonly Placed[] {
  return [
    ...suction.map((element) => elementRow(element, totalFlow)),
    ...branches.flatMap((branch, b) => {
      const flow = at(flows, b);
      return [...teeRow(branch, { flow, head: headAtTee(branches, flows, b) }), ...branchRows(branch, flow)];
    }),
  ];
}

function branchRows({ path, elements, outlet, lift }: NetworkBranch, flow: number): readonly Placed[] {
  const named = elements.map((element) =>
    element.kind === 'outlet' ? { ...element, name: outlet?.name ?? null } : element,
  );
  return [
    ...named.map((element) => elementRow(element, flow)),
    ...(outlet === null ? [] : liftRow({ path, name: outlet.name, bore: null, flow, head: lift })),
  ];
}

/** What a branch loses at the tee that it leaves; negative where a straight run gains head. */
const teeRow = (
  { path, teeLoss }: NetworkBranch,
  { flow, head }: { readonly flow: number; readonly head: number },
): readonly Placed[] =>
  teeLoss === null ? [] : [{ path, kind: 'tee-branch', name: 'tee-90', bore: null, flow, head }];

function elementRow({ path, kind, name, bore, resistance }: PlacedResistance, flow: number): Placed {
  return { path, kind, name, bore, flow, head: resistance.lossAt(flow).head };
}
