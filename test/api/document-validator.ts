/** Answers checked against the OpenAPI document that the service gives out. */
import { createRequire } from 'node:module';
import type { Ajv2020 as Validator } from 'ajv/dist/2020.js';
import type { FormatsPlugin } from 'ajv-formats';
import type { AppUnderTest } from './app-under-test.ts';
import { jsonOf } from './requests.ts';

// Both packages are CommonJS whose default exports differ by the loader.
const load = createRequire(import.meta.url);
const { Ajv2020 }: { Ajv2020: typeof Validator } = load('ajv/dist/2020.js');
const { default: addFormats }: { default: FormatsPlugin } = load('ajv-formats');

export type CheckAnswer = (
  operation: { path: string; method: string; status: number },
  body: unknown,
) => string;

const escaped = (step: string) => encodeURIComponent(step.replaceAll('~', '~0').replaceAll('/', '~1'));

function memberOf(value: unknown, steps: readonly string[]): unknown {
  return steps.reduce<unknown>((place, step) => new Map(Object.entries(Object(place))).get(step), value);
}

/** Empty where the body is what the document promises for the operation and status, else what is wrong. */
export async function documentValidator({ call }: AppUnderTest): Promise<CheckAnswer> {
  const ajv = new Ajv2020({ strict: false, allErrors: true });
  addFormats(ajv);
  const document = await jsonOf(await call('/openapi.json'));
  ajv.addSchema(document, 'document');
  return ({ path, method, status }, body) => {
    const response = ['paths', path, method, 'responses', String(status)];
    const shared = memberOf(document, [...response, '$ref']);
    const place = typeof shared === 'string' ? shared.split('/').slice(1) : response;
    const media = status >= 400 ? 'application/problem+json' : 'application/json';
    const pointer = [...place, 'content', media, 'schema'].map(escaped).join('/');
    const validate = ajv.getSchema(`document#/${pointer}`);
    if (validate === undefined) return `${method} ${path} promises no ${status}`;
    return validate(body) ? '' : ajv.errorsText(validate.errors);
  };
}
