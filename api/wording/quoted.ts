/** Quotes a name that a user gave. */

export const quoted = (name: string): string => `"${name}"`;
