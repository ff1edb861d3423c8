/** Draws seeded errors of meters: independent ones, and ones that last from day to day. */
import { mulberry32 } from '../random/draw.ts';

/** A row of standard normal deviates by Box and Muller (1958). */
export function normals(seed: number): () => number {
  const uniform = mulberry32(seed);
  return () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
}

/** Errors of variance 1 whose correlation from one to the next is phi. */
export function lasting(normal: () => number, phi: number): () => number {
  let error = normal();
  return () => {
    const now = error;
    error = phi * error + Math.sqrt(1 - phi * phi) * normal();
    return now;
  };
}
