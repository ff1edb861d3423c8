/** States the figures of a component by each method of finding its loss, with their sources. */
import type { NamedLoss, NamedLossCommon } from './named-loss.ts';

export const CRANE = 'Crane Technical Paper 410 (2009), K = n fT, as open references reprint it';
const HOOPER =
  'W. B. Hooper, The two-K method predicts head losses in pipe fittings, Chemical Engineering, 24 August 1981, p. 97, as an open library of fluid mechanics reprints it';
const DARBY =
  'R. Darby, 3-K method (Silverberg and Darby, Chemical Engineering, July 1999, p. 101), as two open reprints give it; the bore is taken for the nominal size';

/** A row of the table without what it shares with the other rows of its component. */
export type ByMethod = NamedLoss extends infer Row
  ? Row extends NamedLoss
    ? Omit<Row, Exclude<keyof NamedLossCommon, 'source' | 'verified'>>
    : never
  : never;

/** K = n fT of the bore; n [-] is the length of pipe that loses as much, in diameters. */
export const equivalentDiameters = (n: number, source: string = CRANE): ByMethod => ({
  ...{ method: 'equivalent-diameters', value: n, source, verified: true },
});

/** K [-] in every bore. */
export const fixedK = (value: number, source: string, verified = true): ByMethod => ({
  ...{ method: 'fixed-k', value, source, verified },
});

/** K = K1/Re + K (1 + 1 in/D), of K1 [-] and K [-]. */
export const twoK = (laminarValue: number, value: number): ByMethod => ({
  ...{ method: 'two-k', laminarValue, value, source: HOOPER, verified: true },
});

/** K = K1/Re + Ki (1 + Kd/(D/1 in)^0.3), of K1, Ki and Kd [-]; `note` is said after the source. */
export const threeK = (laminarValue: number, value: number, sizeValue: number, note = ''): ByMethod => ({
  ...{ method: 'three-k', laminarValue, value, sizeValue, source: `${DARBY}${note}`, verified: true },
});

/** The rows of one component, its default method first. */
export const byMethods = (
  component: Pick<NamedLossCommon, 'name' | 'kind' | 'role' | 'description'>,
  methods: readonly ByMethod[],
): readonly NamedLoss[] => methods.map((figures) => ({ ...component, ...figures }));
