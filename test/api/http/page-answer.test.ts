/** Answers that are no data: pictures, pages, calendars. */
import { expect, it } from 'vitest';
import { defineRoute } from '../../../api/http/define-route.ts';
import { pageAnswer } from '../../../api/http/page-answer.ts';
import { noBody } from '../../../api/http/request-body.ts';
import { noQuery } from '../../../api/http/route.ts';
import { success } from '../../../curves/result.ts';
import { appUnderTest } from '../app-under-test.ts';

const picture = () =>
  appUnderTest({
    mount: (api) =>
      defineRoute(
        api,
        {
          method: 'get',
          path: '/v1/picture',
          operationId: 'getPicture',
          summary: 'A picture',
          description: 'A picture.',
          tag: 'service',
          query: noQuery,
          body: noBody,
          answer: pageAnswer({ mediaType: 'image/svg+xml', description: 'The picture.', example: '<svg/>' }),
        },
        async () => success({ body: '<svg/>', validator: { basis: 1 } }),
      ),
  });

it('a picture comes as such, with its own style allowed and nothing else', async () => {
  const answer = await (await picture()).call('/v1/picture');
  expect(answer.headers.get('Content-Type')).toBe('image/svg+xml; charset=utf-8');
  expect(answer.headers.get('Content-Security-Policy')).toBe(
    "default-src 'none'; style-src 'unsafe-inline'; frame-ancestors 'none'",
  );
  expect(await answer.text()).toBe('<svg/>');
});

it('a picture that is known already is not sent again', async () => {
  const app = await picture();
  const etag = (await app.call('/v1/picture')).headers.get('ETag') ?? '';
  expect((await app.call('/v1/picture', { headers: { 'If-None-Match': etag } })).status).toBe(304);
});

it('a picture has no pointer, and is not to be had as JSON', async () => {
  const app = await picture();
  expect((await app.call('/v1/picture?pointer=/x')).status).toBe(422);
  expect((await app.call('/v1/picture', { headers: { Accept: 'application/json' } })).status).toBe(406);
});
