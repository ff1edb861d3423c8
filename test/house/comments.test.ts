/** What comments of the pure rooms promise: a sentence for every file, a unit for every figure, tests that exist. */
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { packageFolder } from '../../api/http/examples.ts';
import { type SourceFile, sourceFiles } from './source-files.ts';

/** Files and folders whose comments do not state every unit yet: the list may only become shorter. */
const UNSTATED = [
  ...['models/condition/', 'models/calibration/', 'curves/head-curve.ts', 'curves/power-law.ts'],
  ...['curves/poisson.ts', 'curves/student-t.ts'],
];

const UNIT = /\[[^\]]+\]/;
const FIGURE = /(^|[^a-zA-Z])(number|Float64Array)([^a-zA-Z]|$)/;
const HEADER = /^\/\*\* [A-Z][^\n]*\. \*\/\n/;
const NAMED_TEST = /\btest\/[a-z0-9/-]+(?:\.test)?\.ts/g;

const parsed = ({ path, text }: SourceFile): ts.SourceFile =>
  ts.createSourceFile(path, text, ts.ScriptTarget.Latest, true);

/** The doc comments right before a node. */
function docOf(node: ts.Node): string {
  const text = node.getSourceFile().text;
  const comments = ts.getLeadingCommentRanges(text, node.getFullStart()) ?? [];
  return comments.map(({ pos, end }) => text.slice(pos, end)).join('\n');
}

const isExported = (node: ts.Node): boolean =>
  ts.canHaveModifiers(node) &&
  (ts.getModifiers(node) ?? []).some(({ kind }) => kind === ts.SyntaxKind.ExportKeyword);

interface Declared {
  readonly name: string;
  readonly node: ts.Node;
  /** Its parameters and result, as written. */
  readonly signature: string;
}

function functionOf(statement: ts.Statement): Declared | null {
  if (!isExported(statement)) return null;
  if (ts.isFunctionDeclaration(statement) && statement.name !== undefined) {
    return { name: statement.name.text, node: statement, signature: signatureOf(statement) };
  }
  if (!ts.isVariableStatement(statement)) return null;
  const [declaration] = statement.declarationList.declarations;
  const made = declaration?.initializer;
  if (declaration === undefined || made === undefined || !ts.isArrowFunction(made)) return null;
  return { name: declaration.name.getText(), node: statement, signature: signatureOf(made) };
}

const signatureOf = ({ parameters, type }: ts.SignatureDeclaration): string =>
  [...parameters.map((one) => one.type?.getText() ?? ''), type?.getText() ?? ''].join('; ');

/** Figures of an exported type that neither their own comment nor that of the type gives a unit. */
function fieldsWithoutUnit(statement: ts.Statement): readonly string[] {
  if (!(ts.isInterfaceDeclaration(statement) || ts.isTypeAliasDeclaration(statement))) return [];
  if (!isExported(statement)) return [];
  const found: string[] = [];
  const visit = (node: ts.Node, above: string): void => {
    const doc = above + docOf(node);
    const isField = ts.isPropertySignature(node) || ts.isMethodSignature(node);
    const written = ts.isPropertySignature(node) ? (node.type?.getText() ?? '') : node.getText();
    if (isField && !written.includes('{') && !written.includes('=>')) {
      if (FIGURE.test(written) && !UNIT.test(doc))
        found.push(`${statement.name.text}.${node.name.getText()}`);
      return;
    }
    ts.forEachChild(node, (child) => visit(child, doc));
  };
  visit(statement, '');
  return found;
}

describe('the comments of models and curves', () => {
  const files = sourceFiles('models', 'curves').filter(({ path }) => !path.endsWith('.d.ts'));
  const stated = files.filter(({ path }) => !UNSTATED.some((prefix) => path.startsWith(prefix)));

  it('open every file with one sentence', () => {
    expect(files.filter(({ text }) => !HEADER.test(text)).map(({ path }) => path)).toEqual([]);
  });

  it('say of every exported function what it computes', () => {
    const silent = stated.flatMap((file) =>
      parsed(file).statements.flatMap((statement) => {
        const declared = functionOf(statement);
        const doc =
          declared === null ? '' : docOf(declared.node).replace(file.text.match(HEADER)?.[0] ?? '', '');
        return declared === null || doc.includes('/**') ? [] : [`${file.path}: ${declared.name}`];
      }),
    );
    expect(silent).toEqual([]);
  });

  it('state the unit of what a function takes and gives', () => {
    const silent = stated.flatMap((file) =>
      parsed(file).statements.flatMap((statement) => {
        const declared = functionOf(statement);
        if (declared === null || !FIGURE.test(declared.signature)) return [];
        return UNIT.test(docOf(declared.node)) ? [] : [`${file.path}: ${declared.name}`];
      }),
    );
    expect(silent).toEqual([]);
  });

  it('state the unit of every figure of an exported type', () => {
    const silent = stated.flatMap((file) =>
      parsed(file).statements.flatMap((statement) =>
        fieldsWithoutUnit(statement).map((field) => `${file.path}: ${field}`),
      ),
    );
    expect(silent).toEqual([]);
  });

  it('name tests that exist', () => {
    const missing = sourceFiles('models', 'curves', 'api').flatMap(({ path, text }) =>
      [...text.matchAll(NAMED_TEST)]
        .filter(([named]) => !existsSync(join(packageFolder(), named)))
        .map(([named]) => `${path}: ${named}`),
    );
    expect(missing).toEqual([]);
  });
});
