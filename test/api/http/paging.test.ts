/** Cursors. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decodeCursor, encodeCursor } from '../../../api/http/paging.ts';

describe('a cursor', () => {
  it('leads back to where it was made', () => {
    fc.assert(
      fc.property(fc.nat(), fc.uuid(), (createdAt, id) => {
        const cursor = encodeCursor({ createdAt, id });
        expect(cursor).toMatch(/^[\w-]+$/);
        expect(decodeCursor(cursor)).toEqual({ createdAt, id });
      }),
      { seed: 1 },
    );
  });

  it.each(['', 'x', 'MTIz', '../..', `${encodeCursor({ createdAt: 1, id: 'a' })}=`, 'A'.repeat(300)])(
    'is not "%s"',
    (text) => {
      expect(decodeCursor(text)).toBeUndefined();
    },
  );
});
