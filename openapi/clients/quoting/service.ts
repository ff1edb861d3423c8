/** The service as a typed client: what it takes and gives is known from its document. */
import createClient from 'openapi-fetch';
import type { components, paths } from './document.d.ts';

export type Loop = components['schemas']['LoopRequest'];
export type Pump = components['schemas']['PumpRequest'];
export type Problem = components['schemas']['Problem'];

/** Of the forms that an answer can come in, this client reads these. */
type Media = 'application/json' | 'application/problem+json';

const clientAt = (address: string) => createClient<paths, Media>({ baseUrl: address });

export type Service = ReturnType<typeof clientAt>;

export const serviceAt = (address: string): Service => clientAt(address);

/** What the service said in place of an answer. */
export class Refused extends Error {
  readonly problem: Problem;

  constructor(problem: Problem) {
    const places = (problem.errors ?? []).map(({ pointer, parameter, detail }) =>
      `${pointer ?? parameter ?? ''} ${detail}`.trim(),
    );
    super([problem.detail, ...places].join('\n'));
    this.problem = problem;
  }
}

/** The answer; throws what the service said where there is none. */
export function answerOf<Answer>({ data, error }: { data?: Answer; error?: Problem }): Answer {
  if (data !== undefined) return data;
  throw error === undefined ? new Error('the service gave no answer') : new Refused(error);
}

type ComparisonBody = NonNullable<
  paths['/v1/comparisons']['post']['requestBody']
>['content']['application/json'];

/** What each option costs over the years; the service keeps the comparison. */
export const compared = async (service: Service, body: ComparisonBody) =>
  answerOf(await service.POST('/v1/comparisons', { body }));

export type Comparison = Awaited<ReturnType<typeof compared>>;

type RecommendationBody = NonNullable<
  paths['/v1/recommendations']['post']['requestBody']
>['content']['application/json'];

/** Which of the pumps, at which setting, at what cost a year. */
export const recommended = async (service: Service, body: RecommendationBody) =>
  answerOf(await service.POST('/v1/recommendations', { body }));

export type Recommendation = Awaited<ReturnType<typeof recommended>>;
export type Duty = Recommendation['ranking'][number];
