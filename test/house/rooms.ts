/** The rooms of the sources, and the arrows between them: who imports whom. */
import { dirname, join, normalize } from 'node:path';
import { sourceFiles } from './source-files.ts';

/** Folders of which each folder is a room. */
const OF_ROOMS: ReadonlySet<string> = new Set(['models', 'api', 'api/records', 'api/features']);

/** A room is a folder of those above; what lies in no folder of one is a room of its own. */
export function roomOf(path: string): string {
  const folders = path.split('/').slice(0, -1);
  const depth = folders.findIndex((_, at) => !OF_ROOMS.has(folders.slice(0, at + 1).join('/')));
  return depth < 0 ? `${folders.join('/')}/*` : folders.slice(0, depth + 1).join('/');
}

export interface Arrow {
  readonly from: string;
  readonly to: string;
  /** A file by which it is known. */
  readonly file: string;
}

const IMPORT = /(?:^|\n)(?:import|export)[^;]*?from '(\.[^']+)'/g;

/** One arrow for each pair of rooms of which the first imports the second. */
export function arrowsOf(...folders: readonly string[]): readonly Arrow[] {
  const arrows = new Map<string, Arrow>();
  for (const { path, text } of sourceFiles(...folders)) {
    for (const [, imported = ''] of text.matchAll(IMPORT)) {
      const [from, to] = [roomOf(path), roomOf(normalize(join(dirname(path), imported)))];
      if (from !== to) arrows.set(`${from} ${to}`, { from, to, file: path });
    }
  }
  return [...arrows.values()];
}

/** Rooms on a way from one back to itself, in order; empty where there is none. */
export function circleIn(arrows: readonly Pick<Arrow, 'from' | 'to'>[]): readonly string[] {
  const known = new Set<string>();
  const walk = (room: string, way: readonly string[]): readonly string[] => {
    const place = way.indexOf(room);
    if (place >= 0) return [...way.slice(place), room];
    if (known.has(room)) return [];
    for (const { from, to } of arrows) {
      if (from !== room) continue;
      const circle = walk(to, [...way, room]);
      if (circle.length > 0) return circle;
    }
    known.add(room);
    return [];
  };
  for (const { from } of arrows) {
    const circle = walk(from, []);
    if (circle.length > 0) return circle;
  }
  return [];
}
