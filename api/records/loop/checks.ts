/** Checks what must hold across a whole loop. */
import type { z } from '@hono/zod-openapi';
import type { ShareOutlet } from '../../../models/loop/loop.ts';
import { BRANCH_DEPTH_MAX, BRANCHES_MAX } from '../../fields/limits.ts';

const SHARES_ROUNDING = 1e-9;

type Path = (string | number)[];

/** A branch, whatever its runs are made of. */
interface Branch {
  readonly outlet?: { readonly name: string } | undefined;
  readonly branches?: readonly Branch[] | undefined;
}

interface Place {
  readonly branch: Branch;
  readonly path: Path;
  readonly depth: number;
}

const taken = (name: string) => `is "${name}", the name of another outlet of this loop`;

/** Every branch below the discharge, in document order. */
function placesOf(discharge: Branch): readonly Place[] {
  const places: Place[] = [];
  const waiting: Place[] = [{ branch: discharge, path: [], depth: 0 }];
  for (let place = waiting.pop(); place !== undefined; place = waiting.pop()) {
    places.push(place);
    const { branch, path, depth } = place;
    const inner = (branch.branches ?? []).map((below, i) => ({
      branch: below,
      path: [...path, 'branches', i],
      depth: depth + 1,
    }));
    waiting.push(...inner.toReversed());
  }
  return places;
}

/** How many branches there are, and on how many levels. */
export function extentOf(discharge: Branch): { readonly branches: number; readonly levels: number } {
  const places = placesOf(discharge);
  return { branches: places.length - 1, levels: Math.max(...places.map(({ depth }) => depth)) };
}

export function checkBranches(discharge: Branch, issues: z.RefinementCtx): void {
  const places = placesOf(discharge);
  const over = (noun: string, { limit, actual }: { limit: number; actual: number }) => {
    if (actual <= limit) return;
    const message = `has ${actual} ${noun}; ${limit} are the limit`;
    issues.addIssue({ code: 'custom', message, params: { limit, actual } });
  };
  over('branches', { limit: BRANCHES_MAX, actual: places.length - 1 });
  const actual = Math.max(...places.map(({ depth }) => depth));
  over('levels of branches', { limit: BRANCH_DEPTH_MAX, actual });

  const names = new Set<string>();
  for (const { branch, path } of places) {
    const name = branch.outlet?.name;
    if (name === undefined) continue;
    if (names.has(name))
      issues.addIssue({ code: 'custom', path: [...path, 'outlet', 'name'], message: taken(name) });
    names.add(name);
  }
}

export function checkShares(outlets: readonly ShareOutlet[], issues: z.RefinementCtx): void {
  const names = new Set<string>();
  for (const [i, { name }] of outlets.entries()) {
    if (names.has(name)) issues.addIssue({ code: 'custom', path: [i, 'name'], message: taken(name) });
    names.add(name);
  }
  const sum = outlets.reduce((total, { share }) => total + share, 0);
  if (Math.abs(sum - 1) <= SHARES_ROUNDING) return;
  issues.addIssue({
    code: 'custom',
    message: `have shares of ${sum} in all; they must add up to 1`,
  });
}
