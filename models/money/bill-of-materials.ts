/** Lists what a loop's pipework is made of: pipes by length, all else by pieces. */
import type { Branch, Intake, Outlet, PipeBore, PipeworkLoop, RunElement } from '../loop/loop.ts';
import { countOf, roleOf } from '../loop/role-of-element.ts';

export type MaterialKind = 'pipe' | 'fitting' | 'valve' | 'tee' | 'nozzle' | 'screen';

/** `name` says what it is and of which size, alike for all that are alike. */
export interface Material {
  readonly kind: MaterialKind;
  readonly name: string;
  /** Pieces [-]; of a pipe the runs that it is used in. */
  readonly count: number;
  /** Of a pipe, all of it [m]; null of the rest. */
  readonly length: number | null;
}

export interface BillOfMaterials {
  /** By kind, then name. */
  readonly materials: readonly Material[];
  /** JSON pointers of elements that state a loss without saying what causes it. */
  readonly unnamed: readonly string[];
}

/** One thing at one place. */
type Piece = Material | { readonly kind: 'unnamed'; readonly pointer: string };

const KINDS: readonly MaterialKind[] = ['pipe', 'fitting', 'valve', 'tee', 'nozzle', 'screen'];

const millimetres = (length: number): string => `${Number((1000 * length).toPrecision(6))} mm`;

const sizeOfPipe = (pipe: string | PipeBore): string =>
  typeof pipe === 'string' ? pipe : millimetres(pipe.insideDiameter);

const sizeOf = (element: RunElement): string | null => ('pipe' in element ? sizeOfPipe(element.pipe) : null);

function firstSize(run: readonly RunElement[]): string | null {
  for (const element of run) {
    const size = sizeOf(element);
    if (size !== null) return size;
  }
  return null;
}

/** That of the first pipe met when a branch is read from where it begins. */
function firstSizeOfBranch(branch: Branch): string | null {
  let size = firstSize(branch.run);
  for (const child of branch.branches ?? []) size ??= firstSizeOfBranch(child);
  return size;
}

interface Sizes {
  readonly before: string | null;
  readonly after: string | null;
}

const sized = (name: string, size: string | null): string => (size === null ? name : `${name}, ${size}`);

const piece = (kind: MaterialKind, name: string, count = 1): Piece => ({ kind, name, count, length: null });

function valveName(valve: string | { readonly kv: number } | { readonly cv: number }): string {
  if (typeof valve === 'string') return valve;
  return 'kv' in valve ? `valve of kv ${valve.kv}` : `valve of cv ${valve.cv}`;
}

/** What an element is; its size is that of the pipe before it, else after it, as its bore is. */
function pieceOf(element: RunElement, { before, after }: Sizes, pointer: string): Piece {
  if ('pipe' in element) {
    const name = `pipe, ${sizeOfPipe(element.pipe)}`;
    return { kind: 'pipe', name, count: 1, length: element.length };
  }
  const stated =
    'diameter' in element && element.diameter !== undefined ? millimetres(element.diameter) : null;
  const size = stated ?? before ?? after;
  if ('fitting' in element) {
    const changes = roleOf(element) === 'bore-change' && before !== null && after !== null;
    const name = sized(element.fitting, changes ? `${before} to ${after}` : size);
    return piece('fitting', name, element.count ?? 1);
  }
  if ('valve' in element) return piece('valve', sized(valveName(element.valve), size));
  return { kind: 'unnamed', pointer };
}

/** The pieces of a run, and the size of its last pipe. */
function ofRun(
  run: readonly RunElement[],
  { upstream, downstream, pointer }: { upstream: string | null; downstream: string | null; pointer: string },
): { readonly pieces: readonly Piece[]; readonly last: string | null } {
  let before = upstream;
  const pieces = run.map((element, index) => {
    const after = firstSize(run.slice(index + 1)) ?? downstream;
    const found = pieceOf(element, { before, after }, `${pointer}/${index}`);
    before = sizeOf(element) ?? before;
    return found;
  });
  return { pieces, last: before };
}

function ofOutlet({ nozzleDiameter, nozzleCount = 1 }: Outlet): readonly Piece[] {
  return nozzleDiameter === undefined
    ? []
    : [piece('nozzle', `nozzle, ${millimetres(nozzleDiameter)}`, nozzleCount)];
}

/** Of a split that is stated; one that is not is unnamed, unless the branches have tees of their own. */
function teesOf({ split, branches = [] }: Branch, size: string | null, pointer: string): readonly Piece[] {
  if (split !== undefined) return [piece('tee', sized('tee', size), branches.length - 1)];
  return branches.some(({ run }) => countOf(run, 'tee') > 0)
    ? []
    : [{ kind: 'unnamed', pointer: `${pointer}/branches` }];
}

function ofBranch(branch: Branch, upstream: string | null, pointer: string): readonly Piece[] {
  const children = branch.branches ?? [];
  const downstream = children.map(firstSizeOfBranch).find((size) => size !== null) ?? null;
  const { pieces, last } = ofRun(branch.run, { upstream, downstream, pointer: `${pointer}/run` });
  const tees = children.length < 2 ? [] : teesOf(branch, last ?? downstream, pointer);
  return [
    ...pieces,
    ...tees,
    ...(branch.outlet === undefined ? [] : ofOutlet(branch.outlet)),
    ...children.flatMap((child, index) => ofBranch(child, last, `${pointer}/branches/${index}`)),
  ];
}

function ofIntake({ screen }: Intake): readonly Piece[] {
  if (screen === undefined) return [];
  const across = screen.shape === 'cylinder' ? screen.diameter : screen.width;
  const name = `screen, ${screen.shape} ${millimetres(across)} x ${millimetres(screen.length)}`;
  return [piece('screen', name, screen.count)];
}

function gathered(pieces: readonly Piece[]): readonly Material[] {
  const byName = new Map<string, Material>();
  for (const one of pieces) {
    if (one.kind === 'unnamed' || one.count === 0) continue;
    const known = byName.get(one.name);
    const length = one.length === null ? null : one.length + (known?.length ?? 0);
    byName.set(one.name, { ...one, count: one.count + (known?.count ?? 0), length });
  }
  return [...byName.values()].toSorted(
    (a, b) => KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind) || (a.name < b.name ? -1 : 1),
  );
}

/**
 * The materials of a loop: pipes of its runs by length [m], fittings and valves by the size of the pipe they belong
 * to, a tee for each branch beyond the first where a split is stated, nozzles, screens. The pump is no part of it.
 *
 * A loss that names no thing (a coefficient, an equivalent length, a head at a flow) is listed as unnamed, and so is
 * a split without a tee.
 */
export function billOfMaterials(loop: PipeworkLoop): BillOfMaterials {
  const { suction, discharge, intake } = loop;
  const downstream = firstSizeOfBranch(discharge);
  const drawn = ofRun(suction, { upstream: null, downstream, pointer: '/suction' });
  const pieces = [
    ...(intake === undefined ? [] : ofIntake(intake)),
    ...drawn.pieces,
    ...ofBranch(discharge, drawn.last, '/discharge'),
  ];
  return {
    materials: gathered(pieces),
    unnamed: pieces.flatMap((one) => (one.kind === 'unnamed' ? [one.pointer] : [])),
  };
}
