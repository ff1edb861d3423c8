/** The operations of the OpenAPI document, as a program that reads it sees them. */
import { z } from 'zod';

const mediaTypes = z.record(
  z.string(),
  z.looseObject({ examples: z.record(z.string(), z.looseObject({ value: z.unknown() })).optional() }),
);

const parameter = z.looseObject({
  name: z.string(),
  in: z.enum(['path', 'query', 'header']),
  required: z.boolean().optional(),
  schema: z.looseObject({ examples: z.array(z.unknown()).optional() }),
});

const operation = z.looseObject({
  operationId: z.string(),
  parameters: z.array(parameter).optional(),
  requestBody: z.looseObject({ content: mediaTypes }).optional(),
  responses: z.record(
    z.string(),
    z.looseObject({ content: mediaTypes.optional(), headers: z.record(z.string(), z.unknown()).optional() }),
  ),
});

const methods = ['get', 'post', 'put', 'delete'] as const;

const documentSchema = z.looseObject({
  paths: z.record(z.string(), z.partialRecord(z.enum(methods), operation)),
});

export type Parameter = z.output<typeof parameter>;

export interface Operation {
  readonly id: string;
  readonly path: string;
  readonly method: (typeof methods)[number];
  readonly parameters: readonly Parameter[];
  /** Each example of its body with its media type. */
  readonly bodies: readonly { readonly mediaType: string; readonly value: unknown }[];
  /** The statuses that are no problems, with the media types that they come in. */
  readonly successes: ReadonlyMap<number, readonly string[]>;
  /** The headers that each of these has. */
  readonly headers: ReadonlyMap<number, readonly string[]>;
  /** The example of each answer in JSON. */
  readonly answers: readonly { readonly status: number; readonly value: unknown }[];
}

const examplesOf = (content: z.output<typeof mediaTypes>) =>
  Object.entries(content).flatMap(([mediaType, { examples = {} }]) =>
    Object.values(examples).map(({ value }) => ({ mediaType, value })),
  );

/** In the order of the document. */
export function operationsOf(document: unknown): readonly Operation[] {
  return Object.entries(documentSchema.parse(document).paths).flatMap(([path, item]) =>
    methods.flatMap((method) => {
      const found = item[method];
      if (found === undefined) return [];
      const good = Object.entries(found.responses).filter(([status]) => Number(status) < 400);
      return [
        {
          id: found.operationId,
          path,
          method,
          parameters: found.parameters ?? [],
          bodies: examplesOf(found.requestBody?.content ?? {}),
          headers: new Map(good.map(([status, { headers = {} }]) => [Number(status), Object.keys(headers)])),
          successes: new Map(
            good.map(([status, { content = {} }]) => [Number(status), Object.keys(content)]),
          ),
          answers: good.flatMap(([status, { content = {} }]) =>
            examplesOf(content)
              .filter(({ mediaType }) => mediaType === 'application/json')
              .map(({ value }) => ({ status: Number(status), value })),
          ),
        },
      ];
    }),
  );
}
