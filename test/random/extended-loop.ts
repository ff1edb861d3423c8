/** Documents of a loop and a pump with the entries that one-way runs, free outlets, bore changes and motors add. */
import type { Branch, Outlet, PipeworkLoop, RunElement } from '../../models/loop/loop.ts';
import type { Pump } from '../../models/pump/pump.ts';

export type ExtendedElement = RunElement & { readonly boreChange?: boolean | undefined };

export type ExtendedOutlet = Outlet & { readonly exit?: 'submerged' | 'free' | undefined };

export interface ExtendedBranch extends Omit<Branch, 'run' | 'outlet' | 'branches'> {
  readonly run: readonly ExtendedElement[];
  readonly outlet?: ExtendedOutlet | undefined;
  readonly branches?: readonly ExtendedBranch[] | undefined;
  /** Highest point of the run above the surface drawn from [m]. */
  readonly highestElevation?: number | undefined;
}

export interface ExtendedLoop extends Omit<PipeworkLoop, 'suction' | 'discharge'> {
  readonly suction: readonly ExtendedElement[];
  readonly discharge: ExtendedBranch;
  readonly boreChanges?: 'abrupt' | 'ignored' | undefined;
}

export type ExtendedPump = Pump & { readonly ratedPower?: number | undefined };
