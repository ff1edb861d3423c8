/** When invented readings were taken, and how far a fault had come by then. */
import type { Draw } from '../../random/draw.ts';
import { NOW } from './asker.ts';

/** How far the fault has come, 0 to 1, at a share of the time that is looked at. */
type Course = (share: number) => number;

export interface History {
  /** Of the readings, rising [ms since 1970]. */
  readonly times: readonly { readonly time: number; readonly course: number }[];
  /** When the screen was cleaned, which takes the fault away until it grows again. */
  readonly cleanedAt: readonly number[];
  /** The time at a share of the whole. */
  readonly timeAt: (share: number) => number;
}

const DAY = 86_400_000;
/** The last reading is some hours old. */
const AGE = 0.1 * DAY;

function randomCourse(draw: Draw): Course {
  const onset = draw.between(0.1, 0.7);
  const grown = (share: number) => Math.max(0, (share - onset) / (1 - onset));
  return draw.pick<Course>([
    (share) => (share < onset ? 0 : 1),
    grown,
    (share) => grown(share) ** 2,
    (share) => share,
    () => 1,
  ]);
}

export function randomHistory(draw: Draw): History {
  const days = draw.pick([2, 30, 60, 90, 120, 180, 270, 330]);
  const steps = Math.floor(days / draw.pick([0.5, 1, 1, 3.5, 7]));
  const timeAt = (share: number) => Math.round(NOW - AGE - days * DAY * (1 - share));
  const grown = randomCourse(draw);
  const cleaned = days > 40 && draw.chance(0.25) ? draw.between(0.4, 0.9) : null;
  const course: Course = (share) =>
    cleaned === null || share < cleaned ? grown(share) : grown(0.7 * (share - cleaned));
  const times = Array.from({ length: steps + 1 }, (_, step) => {
    const share = (step + draw.between(0, 0.6)) / (steps + 1);
    return { time: timeAt(share), course: course(share) };
  });
  return { times, cleanedAt: cleaned === null ? [] : [timeAt(cleaned)], timeAt };
}
