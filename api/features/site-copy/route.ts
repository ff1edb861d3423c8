/** Exports a site as one document, and imports it into an empty site. */
import { z } from '@hono/zod-openapi';
import { failed, type Result, success } from '../../../curves/result.ts';
import type { Api } from '../../http/api.ts';
import { bodyText } from '../../http/body-text.ts';
import { defineRoute } from '../../http/define-route.ts';
import { example } from '../../http/examples.ts';
import { jsonAnswer } from '../../http/json-answer.ts';
import { parseJson } from '../../http/parse-json.ts';
import { type Problem, problem } from '../../http/problem.ts';
import { noBody, type RequestBody } from '../../http/request-body.ts';
import { noQuery } from '../../http/route.ts';
import type { SiteStore } from '../../store/store.ts';
import { described } from '../../units/described.ts';
import { documentedContext, type SchemaContext } from '../../units/schema-context.ts';
import { checkSiteCopy } from './check.ts';
import { SITE_CONTENTS } from './contents.ts';
import type { SiteContents } from './contract.ts';
import { readSiteCopy, type SiteCopy } from './read.ts';
import {
  members,
  SITE_COPY_FORMAT,
  SITE_COPY_VERSION,
  siteCopyAnswer,
  siteCopyCounts,
  siteCopyInput,
} from './schema.ts';
import { SITE_COPY_BYTES_MAX, writeSiteCopy } from './write.ts';

const MEDIA_TYPE = 'application/json';

const common = { path: '/v1/export', tag: 'site' } as const;

const exportQuery = (context: SchemaContext) =>
  z.strictObject({
    readings: described(context, z.enum(['true', 'false']), {
      description:
        'Whether readings are among it; `true` where it is left out. A site with too many for one document gives them loop by loop, at `/v1/loops/{loopId}/readings`.',
      examples: ['false'],
    }).optional(),
  });

/** As someone would write it by hand; an export states ids, versions and times besides. */
const WRITTEN_BY_HAND = {
  format: SITE_COPY_FORMAT,
  formatVersion: SITE_COPY_VERSION,
  site: example('site'),
  tariffs: [example('tariff')],
  pumps: [example('pump-canister-250')],
  loops: [example('loop-kelp-flume')],
};

/** Larger than other bodies, and read in pieces. */
const copyBody: RequestBody<SiteCopy> = {
  async read(request, { system }) {
    const text = await bodyText(request, MEDIA_TYPE, SITE_COPY_BYTES_MAX);
    if (!text.ok) return text;
    const raw = parseJson(text.value);
    return raw.ok ? await readSiteCopy(raw.value, system) : raw;
  },
  document: () => ({
    mediaType: MEDIA_TYPE,
    schema: siteCopyInput(documentedContext('request')),
    example: WRITTEN_BY_HAND,
  }),
};

async function stored(store: SiteStore, contents: SiteContents): Promise<Result<null, Problem>> {
  const written = await store.of(SITE_CONTENTS).write(contents);
  if (written.outcome === 'written') return success(null);
  return failed(problem('not-empty', `The site has ${written.kinds.join(', ')} already.`));
}

function exportRoute(api: Api): void {
  defineRoute(
    api,
    {
      ...common,
      method: 'get',
      query: exportQuery,
      operationId: 'exportSite',
      summary: 'Export the site',
      description:
        'All that the site holds as one document, as of one instant. What was entered is there to 15 digits, in the units in force; exported from where it was imported, it is the same.',
      body: noBody,
      answer: jsonAnswer({
        schema: siteCopyAnswer,
        description: 'The site with all that it holds.',
        example: example('answers/export'),
      }),
    },
    async ({ store, system, query: { readings } }) => {
      const read = await store.of(SITE_CONTENTS).read({ readings: readings !== 'false' });
      if (read.outcome === 'read') {
        const written = await writeSiteCopy(read.contents, system);
        return written.ok ? success({ body: written.value }) : written;
      }
      const { kind, limit, actual } = read;
      const detail = `The site has ${actual} ${kind}; ${limit} can be exported at once.`;
      return failed(problem('limit-exceeded', detail, { limit, actual }));
    },
  );
}

/** They come in lists, a few thousand each. */
const readingsOf = ({ records }: SiteCopy): number =>
  records.readings.reduce((sum, { document }) => sum + document.readings.length, 0);

function importRoute(api: Api): void {
  const { clock, newId } = api.deps;
  defineRoute(
    api,
    {
      ...common,
      method: 'post',
      query: noQuery,
      operationId: 'importSite',
      summary: 'Import a site',
      description:
        "Stores all of an export, or nothing, in a site that holds no records; the site itself is replaced. Ids, versions and times are kept, so that what names a record finds it; a record without them gets new ones. The site's version goes on from where it is, at least.",
      body: copyBody,
      answer: jsonAnswer({
        schema: siteCopyCounts,
        description: 'How much was stored.',
        example: { ...members(() => 0), tariffs: 1, pumps: 4, loops: 4, schedules: 1 },
        status: 201,
      }),
      problems: ['not-empty'],
    },
    async ({ body: copy, store }) => {
      const checked = await checkSiteCopy(copy, { now: clock().getTime(), newId });
      if (!checked.ok) return checked;
      const done = await stored(store, checked.value);
      if (!done.ok) return done;
      const { records } = checked.value;
      return success({
        body: { ...members((kind) => records[kind].length), readings: readingsOf(copy) },
        location: '/v1/site',
      });
    },
  );
}

export function exportRoutes(api: Api): void {
  exportRoute(api);
  importRoute(api);
}
