/** Tells whether water leaves an outlet below a surface or into air. */
import type { Exit, Outlet } from './loop.ts';

/** The exit as stated; else `free` where the outlet's own static head is above 0, `submerged` where it is not. */
export const exitOf = ({ exit, staticHead }: Pick<Outlet, 'exit' | 'staticHead'>): Exit =>
  exit ?? ((staticHead ?? 0) > 0 ? 'free' : 'submerged');
