/** Names a place in the document of a loop. */

/** The tokens of a JSON Pointer (RFC 6901). */
export type DocumentPath = readonly (string | number)[];
