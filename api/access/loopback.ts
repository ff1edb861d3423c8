/** While no access keys exist, only programs on this machine are answered. */
import type { MiddlewareHandler } from 'hono';
import { answerProblem } from '../http/answer-problem.ts';
import type { RequestVariables } from '../http/api.ts';
import { problem } from '../http/problem.ts';

const HOST = /^(?:localhost|127\.0\.0\.1|\[::1\])(?::\d{1,5})?$/i;
const ORIGIN = /^https?:\/\/(?:localhost|127\.0\.0\.1|\[::1\])(?::\d{1,5})?$/i;

const isForwarding = (name: string): boolean =>
  name === 'forwarded' || name === 'via' || name === 'x-real-ip' || name.startsWith('x-forwarded-');

/** What marks a request as not made by a program on this machine: the header, and what is wrong with it. */
function foreignMark({ headers, url }: Request): { header: string; detail: string } | undefined {
  const hosts = [headers.get('host'), new URL(url).host];
  if (hosts.some((host) => host !== null && !HOST.test(host))) {
    return { header: 'Host', detail: 'must be localhost, 127.0.0.1 or [::1]' };
  }
  const origin = headers.get('origin');
  if (origin !== null && !ORIGIN.test(origin)) {
    return { header: 'Origin', detail: 'must be a page of this machine, or absent' };
  }
  const forwarding = [...headers.keys()].find(isForwarding);
  if (forwarding !== undefined)
    return { header: forwarding, detail: 'must be absent: proxies are not answered' };
  return undefined;
}

/** Also keeps out names that another site resolves to this machine, and pages that post across sites. */
export const loopbackOnly: MiddlewareHandler<RequestVariables> = async (c, next) => {
  const mark = foreignMark(c.req.raw);
  if (mark === undefined) return next();
  return answerProblem(c, problem('loopback-only', `${mark.header} ${mark.detail}.`, { errors: [mark] }));
};
