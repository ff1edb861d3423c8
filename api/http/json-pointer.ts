/** Writes JSON pointers (RFC 6901). */

export type PathPart = string | number;

export const toPointer = (path: readonly PathPart[]): string =>
  path.map((part) => `/${String(part).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

const POINTER = /^(?:\/(?:[^~/]|~[01])*)*$/;
const INDEX = /^(?:0|[1-9]\d*)$/;

/** The parts of a pointer; undefined where the text is none. */
export function parsePointer(text: string): readonly string[] | undefined {
  if (!POINTER.test(text)) return undefined;
  return text
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** The value at a path of a JSON document; undefined where there is none. */
export function valueAt(document: unknown, path: readonly PathPart[]): unknown {
  let value = document;
  for (const part of path) {
    if (typeof value !== 'object' || value === null) return undefined;
    if (Array.isArray(value)) {
      const items: readonly unknown[] = value;
      value = INDEX.test(String(part)) ? items[Number(part)] : undefined;
    } else {
      value = Object.getOwnPropertyDescriptor(value, part)?.value;
    }
  }
  return value;
}
