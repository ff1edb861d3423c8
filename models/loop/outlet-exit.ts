/** Tells whether water leaves an outlet below a surface or into air. */
import type { Exit, Outlet } from './loop.ts';

/** As stated; else into air where the outlet lies above the surface that the loop delivers to, as far as its own rise says. */
export const exitOf = ({ exit, staticHead }: Pick<Outlet, 'exit' | 'staticHead'>): Exit =>
  exit ?? ((staticHead ?? 0) > 0 ? 'free' : 'submerged');
