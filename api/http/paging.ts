/** Pages through a list by cursors. */
import type { PageStart } from '../store/versions.ts';

export const PAGE_LIMIT_DEFAULT = 50;
export const PAGE_LIMIT_MAX = 200;

const CURSOR = /^(\d{1,15})\.([\w-]{1,64})$/;

export const encodeCursor = ({ createdAt, id }: PageStart): string =>
  Buffer.from(`${createdAt}.${id}`, 'utf8').toString('base64url');

/** Undefined where the text is no cursor of ours. */
export function decodeCursor(text: string): PageStart | undefined {
  if (!/^[\w-]{1,200}$/.test(text)) return undefined;
  const parts = CURSOR.exec(Buffer.from(text, 'base64url').toString('utf8'));
  const [, createdAt, id] = parts ?? [];
  if (createdAt === undefined || id === undefined) return undefined;
  const start = { createdAt: Number(createdAt), id };
  return encodeCursor(start) === text ? start : undefined;
}
