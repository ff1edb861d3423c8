/** The part that each row of the tables plays, against lists made by hand from the rows' descriptions. */
import { describe, expect, it } from 'vitest';
import { BORE_CHANGES } from '../../../models/components/bore-change.ts';
import { FITTINGS } from '../../../models/components/fittings.ts';
import type { Role } from '../../../models/components/role.ts';
import { VALVES } from '../../../models/components/valves.ts';

const ROWS = [...FITTINGS, ...BORE_CHANGES, ...VALVES];

const namesOf = (role: Role) => ROWS.filter((row) => row.role === role).map(({ name }) => name);

/** Rows that a mistake about would change a bill, a caution or a routine check. */
const LISTED: readonly (readonly [Role, readonly string[]])[] = [
  [
    'tee',
    [
      'tee-run',
      'tee-branch',
      'tee-run-two-k',
      'tee-run-flanged-two-k',
      'tee-branch-two-k',
      'tee-branch-flanged-two-k',
      'tee-run-three-k',
      'tee-run-flanged-three-k',
      'tee-branch-three-k',
      'tee-branch-flanged-three-k',
    ],
  ],
  ['union', ['union']],
  ['bulkhead', ['bulkhead']],
  ['coupling', ['coupling']],
  ['strainer', ['strainer']],
  ['outlet', ['exit']],
  [
    'check-valve',
    [
      'check-swing',
      'check-swing-clear',
      'check-lift',
      'check-lift-angle',
      'check-tilting-disc',
      'check-tilting-disc-15',
      'foot-poppet',
      'foot-hinged',
      'check-swing-two-k',
      'check-lift-two-k',
      'check-tilting-disc-two-k',
      'check-swing-three-k',
      'check-lift-three-k',
    ],
  ],
];

/** The noun of a description, by which a reader knows the role. */
const NOUNS: readonly (readonly [RegExp, Role])[] = [
  [/^Tee\b/, 'tee'],
  [/bend\b|elbow\b/, 'bend'],
  [/entrance\b/i, 'inlet'],
  [/^(?:Reducer|Enlargement)\b/, 'bore-change'],
  [/check valve|^Foot valve/, 'check-valve'],
];

describe('the role of a component', () => {
  it.each(LISTED)('%s is that of the rows listed, and of no other', (role, names) => {
    expect(namesOf(role).toSorted()).toEqual(names.toSorted());
  });

  it('is the one that the noun of its description names', () => {
    for (const { name, description, role } of ROWS) {
      const named = NOUNS.find(([noun]) => noun.test(description) && !/bulkhead/i.test(description));
      if (named !== undefined) expect({ name, role }).toEqual({ name, role: named[1] });
    }
  });

  it('of a valve is to be shut by hand, or to close by itself', () => {
    expect(new Set(VALVES.map(({ role }) => role))).toEqual(new Set(['valve', 'check-valve']));
    expect(ROWS.filter(({ kind }) => kind === 'fitting').every(({ role }) => !/valve/.test(role))).toBe(true);
  });
});
