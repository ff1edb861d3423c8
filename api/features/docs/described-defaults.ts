/** Says defaults of fields in words: a generator would make a field with a declared default mandatory in requests. */
import { changedTree, isNode, type Node } from './json-tree.ts';

function inWords(value: unknown): string {
  if (Array.isArray(value) && value.length === 0) return 'none';
  return isNode(value) ? 'that of each member' : String(value);
}

const says = (description: string): boolean => /\bdefault\b/i.test(description);

function described(schema: Node): Node {
  const { default: value, ...others } = schema;
  const description = typeof others.description === 'string' ? others.description : '';
  if (says(description)) return others;
  return { ...others, description: `${description} Default: ${inWords(value)}.`.trim() };
}

/** The document whose schemas declare no default. */
export function withDescribedDefaults(document: Node): Node {
  const changed = changedTree(document, (value) =>
    isNode(value) && 'default' in value ? described(value) : value,
  );
  return isNode(changed) ? changed : document;
}
