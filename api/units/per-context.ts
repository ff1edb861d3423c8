/** Keeps one instance of a schema for each context. */
import { DEFAULT_DENSITY, type SchemaContext } from './schema-context.ts';

/** Densities other than the default follow the water of loops, of which a facility has few. */
const OTHERS_MAX = 64;

/** The maker, remembering what it made: the document needs one instance a name, and schemas are costly to build. */
export function perContext<S>(make: (context: SchemaContext) => S): (context: SchemaContext) => S {
  const usual = new Map<string, S>();
  const others = new Map<string, S>();
  return (context) => {
    const { system, side, density, exact, documented } = context;
    const kept = density === DEFAULT_DENSITY ? usual : others;
    const key = `${system} ${side} ${density} ${exact} ${documented}`;
    const known = kept.get(key);
    if (known !== undefined) return known;
    if (others.size >= OTHERS_MAX) others.clear();
    const made = make(context);
    kept.set(key, made);
    return made;
  };
}
