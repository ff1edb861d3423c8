/** Makes the rows of the tables whose loss coefficient depends on Reynolds number and size. */
import type { NamedLoss } from './named-loss.ts';
import type { Role } from './role.ts';

const HOOPER = 'Hooper, Chem. Eng., 24 Aug 1981, K = K1/Re + K (1 + 1 in/D)';
const DARBY =
  'Silverberg and Darby, Chem. Eng. 106, July 1999, K = K1/Re + Ki (1 + Kd/D^0.3), D in inches; the bore stands for the nominal size';

type Kind = NamedLoss['kind'];

/** Name, role, what it is, K1 [-], K [-] of infinite Reynolds number and size. */
export type TwoKRow = readonly [
  name: string,
  role: Role,
  description: string,
  laminarValue: number,
  value: number,
];

/** Name, role, what it is, K1 [-], Ki [-], Kd [-]. */
export type ThreeKRow = readonly [
  name: string,
  role: Role,
  description: string,
  laminarValue: number,
  value: number,
  sizeValue: number,
];

/** Makes a row of the two-K method: K = K1/Re + K (1 + 1 in/D). */
export const twoKRow =
  (kind: Kind) =>
  ([name, role, description, laminarValue, value]: TwoKRow): NamedLoss => ({
    ...{
      name,
      kind,
      role,
      description,
      value,
      laminarValue,
      method: 'two-k',
      source: HOOPER,
      fromMemory: false,
    },
  });

/** Makes a row of the three-K method: K = K1/Re + Ki (1 + Kd/(D/1 in)^0.3). */
export const threeKRow =
  (kind: Kind) =>
  ([name, role, description, laminarValue, value, sizeValue]: ThreeKRow): NamedLoss => ({
    ...{ name, kind, role, description, value, laminarValue, sizeValue, method: 'three-k' },
    ...{ source: DARBY, fromMemory: false },
  });
