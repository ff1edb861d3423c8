/** What is made of an object is made once, and kept for as long as the object itself. */

/** An object is made into few things: one a unit system, one a way of balancing. */
const VARIANTS_MAX = 8;

/**
 * The maker with a memory. Its key is the object itself and the variant, if any, so that nothing that is made of one object
 * is ever given for another. An object that it was given is never changed afterwards.
 */
export function oncePerObject<From extends object, Variant extends readonly [] | readonly [string], Made>(
  make: (from: From, ...variant: Variant) => Made,
): (from: From, ...variant: Variant) => Made {
  const known = new WeakMap<From, Map<string, { readonly made: Made }>>();
  return (from, ...variant) => {
    const [key = ''] = variant;
    const ofObject = known.get(from) ?? new Map<string, { readonly made: Made }>();
    known.set(from, ofObject);
    const before = ofObject.get(key);
    if (before !== undefined) return before.made;
    if (ofObject.size >= VARIANTS_MAX) ofObject.clear();
    const made = make(from, ...variant);
    ofObject.set(key, { made });
    return made;
  };
}
