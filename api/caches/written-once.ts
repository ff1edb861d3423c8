/** What never changes while the service runs is made when it is first asked for, and kept: a document, a page, a text. */

/** There is one of it, so that it needs neither a key nor a bound; `make` depends on nothing that can change. */
export function writtenOnce<T>(make: () => T): () => T {
  let written: { readonly value: T } | undefined;
  return () => {
    written ??= { value: make() };
    return written.value;
  };
}
