/** Names a place in the document of a loop. */

/** The tokens of a JSON Pointer (RFC 6901). */
export type DocumentPath = readonly (string | number)[];

/** The JSON Pointer of a path: `~` and `/` in its tokens are written `~0` and `~1`. */
export const pointerTo = (path: DocumentPath): string => path.map((token) => `/${escaped(token)}`).join('');

const escaped = (token: string | number): string => String(token).replaceAll('~', '~0').replaceAll('/', '~1');
