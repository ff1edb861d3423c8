/** Makes entity tags, and judges the conditions of a request on them (RFC 9110). */
import { createHash } from 'node:crypto';
import { failed, type Result, success } from '../../curves/result.ts';
import type { ExpectedVersion } from '../store/versions.ts';
import type { UnitSystem } from '../units/unit-system.ts';
import { type Problem, problem } from './problem.ts';

export const versionEtag = (version: number, system: UnitSystem): string => `"${version}-${system}"`;

const HASH_LENGTH = 22;

/** The tag of an answer that follows from its query, units, form and basis alone. */
export function derivedEtag(facts: {
  path: string;
  query: Readonly<Record<string, string>>;
  system: UnitSystem;
  mediaType: string;
  basis: unknown;
}): string {
  const query = Object.entries(facts.query).sort(([a], [b]) => (a < b ? -1 : 1));
  const text = JSON.stringify([facts.path, query, facts.system, facts.mediaType, facts.basis]);
  return `"${createHash('sha256').update(text).digest('base64url').slice(0, HASH_LENGTH)}"`;
}

const tagsOf = (header: string): readonly string[] => header.match(/(?:W\/)?"[^"]*"/g) ?? [];

/** Whether a condition of If-None-Match names the tag, weakly compared. */
export function matchesAny(ifNoneMatch: string | undefined, etag: string): boolean {
  if (ifNoneMatch === undefined) return false;
  return ifNoneMatch.trim() === '*' || tagsOf(ifNoneMatch).some((tag) => tag.replace(/^W\//, '') === etag);
}

const stale = (detail: string): Problem =>
  problem('stale-version', detail, {
    errors: [{ header: 'If-Match', detail: 'names no version that is there' }],
  });

/** The version that If-Match demands. The units in a tag do not count; weak and foreign tags match nothing. */
export function expectedVersion(ifMatch: string | undefined): Result<ExpectedVersion, Problem> {
  if (ifMatch === undefined || ifMatch.trim() === '') {
    const errors = [{ header: 'If-Match', detail: 'is required' }];
    return failed(problem('version-required', 'Send the ETag that was read in If-Match.', { errors }));
  }
  if (ifMatch.trim() === '*') return success('any');
  const versions = new Set(
    tagsOf(ifMatch).flatMap((tag) => {
      const [, version] = /^"([1-9]\d{0,14})-(?:metric|us)"$/.exec(tag) ?? [];
      return version === undefined ? [] : [Number(version)];
    }),
  );
  const [version, ...others] = versions;
  if (version === undefined) return failed(stale(`If-Match ${ifMatch} names no version.`));
  if (others.length > 0) return failed(stale('If-Match names several versions; name the one that was read.'));
  return success(version);
}
