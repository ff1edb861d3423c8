/** Gives fittings and valves of version 0.1, whose names said how their loss is found, their names and methods of 0.2. */

const NAME_WITH_METHOD = /^(.+)-((?:two|three)-k)$/;

/** Names of 0.1 that meant another fitting of today. */
const OTHER_FITTINGS: ReadonlyMap<string, string> = new Map([['return-bend-two-k', 'return-bend-flanged']]);

function elementOf(member: 'fitting' | 'valve', name: unknown): object | null {
  if (typeof name !== 'string') return null;
  const [, base, method] = NAME_WITH_METHOD.exec(name) ?? [];
  if (base === undefined) return null;
  return { [member]: OTHER_FITTINGS.get(name) ?? base, method };
}

/** JSON values as they came, but for elements of runs such as `{"fitting": "elbow-90-two-k"}`. */
export function withMethods(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withMethods);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).flatMap(([member, inner]) => {
      const element = member === 'fitting' || member === 'valve' ? elementOf(member, inner) : null;
      return element === null ? [[member, withMethods(inner)]] : Object.entries(element);
    }),
  );
}
