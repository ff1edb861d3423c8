/** Names a place in the document of a loop. */

/** The tokens of a JSON Pointer (RFC 6901). */
export type DocumentPath = readonly (string | number)[];

/** The JSON Pointer of a path whose tokens hold neither `/` nor `~`, as those of a loop and a pump do. */
export const pointerTo = (path: DocumentPath): string => path.map((token) => `/${token}`).join('');
