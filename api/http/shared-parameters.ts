/** Says which of the shared query parameters a route has. */
import type { SharedParameters } from './common-query.ts';

interface Facts {
  readonly method: string;
  readonly path: string;
  readonly answer: { readonly status: number; readonly hasTable: boolean; readonly mediaType: string };
}

/** The names of those that a route has. */
export const namesOf = (shared: SharedParameters): readonly string[] =>
  Object.entries(shared).flatMap(([name, has]) => (has ? [name] : []));

/** Units apply wherever the contract does; one value can be had from any JSON that is read. */
export const sharedParameters = ({ method, path, answer }: Facts): SharedParameters => ({
  units: path.startsWith('/v1/'),
  format: answer.hasTable,
  pointer: method === 'get' && answer.status !== 204 && answer.mediaType === 'application/json',
});
