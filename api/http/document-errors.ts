/** Documents the error responses of each operation, one shared component a status. */
import type { Api } from './api.ts';
import { PROBLEMS, type ProblemCode, problemKind } from './problem-registry.ts';
import { PROBLEM_MEDIA_TYPE } from './problem-response.ts';

const EVERYWHERE = [
  'malformed-url',
  'loopback-only',
  'too-slow',
  'url-too-long',
  'headers-too-large',
  'invalid-request',
  'internal-error',
  'unavailable',
] as const;
const WITH_BODY = ['missing-body', 'body-too-large', 'unsupported-media-type'] as const;
const CONDITIONAL = ['not-found', 'stale-version', 'version-required'] as const;

const componentName = (status: number): string => `Problem${status}`;

const isCode = (text: string): text is ProblemCode => text in PROBLEMS;

function describeStatus(status: number): string {
  const kinds = Object.keys(PROBLEMS)
    .filter(isCode)
    .filter((code) => problemKind(code).status === status)
    .map((code) => {
      const { title, remedy } = problemKind(code);
      return remedy === undefined ? `\`${code}\`: ${title}.` : `\`${code}\`: ${title}. ${remedy}`;
    });
  return kinds.join(' ');
}

/** A component is registered with its first use: one that nothing refers to would be dead weight. */
function registerStatus({ app, documentedStatuses }: Api, status: number): void {
  if (documentedStatuses.has(status)) return;
  documentedStatuses.add(status);
  app.openAPIRegistry.registerComponent('responses', componentName(status), {
    description: describeStatus(status),
    content: { [PROBLEM_MEDIA_TYPE]: { schema: { $ref: '#/components/schemas/Problem' } } },
  });
}

interface Facts {
  readonly method: string;
  readonly path: string;
  readonly hasBody: boolean;
  readonly hasContent: boolean;
  readonly conditional: boolean;
  readonly problems: readonly ProblemCode[];
}

export function errorResponses(api: Api, route: Facts): Readonly<Record<string, { $ref: string }>> {
  const codes: readonly ProblemCode[] = [
    ...EVERYWHERE,
    ...(route.hasBody ? WITH_BODY : []),
    ...(route.conditional ? CONDITIONAL : []),
    ...(route.path.includes('{') ? (['not-found'] as const) : []),
    ...(route.hasContent ? (['not-acceptable'] as const) : []),
    ...(route.hasContent && route.method === 'get' ? (['no-value'] as const) : []),
    ...(route.method === 'get' ? [] : (['storage-full'] as const)),
    ...route.problems,
  ];
  const statuses = new Set(codes.map((code) => problemKind(code).status));
  for (const status of statuses) registerStatus(api, status);
  return Object.fromEntries(
    [...statuses].map((status) => [status, { $ref: `#/components/responses/${componentName(status)}` }]),
  );
}
