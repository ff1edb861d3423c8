/** Copies of JSON documents with one member changed. */

function isContainer(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}

const partsOf = (pointer: string): readonly string[] =>
  pointer
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));

/** The document with a value at a JSON pointer; undefined takes the member away. */
export function changed(document: unknown, pointer: string, value: unknown): unknown {
  // Through text, so that what stands twice in the document becomes two.
  const copy: unknown = JSON.parse(JSON.stringify(document));
  const parts = partsOf(pointer);
  const last = parts.at(-1);
  if (last === undefined) return value;
  let place: unknown = copy;
  for (const part of parts.slice(0, -1)) {
    if (!isContainer(place)) throw new Error(`${pointer} leads nowhere`);
    place = place[part];
  }
  if (!isContainer(place)) throw new Error(`${pointer} leads nowhere`);
  if (value !== undefined) place[last] = value;
  else if (Array.isArray(place)) place.splice(Number(last), 1);
  else delete place[last];
  return copy;
}

/** The pointer of every member of a document, its own first. */
export function pointersOf(document: unknown, at = ''): readonly string[] {
  const members = isContainer(document) ? Object.entries(document) : [];
  return [
    at,
    ...members.flatMap(([key, value]) =>
      pointersOf(value, `${at}/${key.replaceAll('~', '~0').replaceAll('/', '~1')}`),
    ),
  ];
}
