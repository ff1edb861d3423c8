/** Names the part that a component plays in a pipework, whatever it is called and however its loss is found. */

/**
 * Two rows of one role count alike in a bill, a caution or a routine check; their names and losses differ.
 * `check-valve` closes by itself against water that runs backwards (foot valves too); `valve` is opened and shut by hand.
 */
export type Role =
  | 'pipe'
  | 'bend'
  | 'tee'
  | 'coupling'
  | 'union'
  | 'bulkhead'
  | 'strainer'
  | 'bore-change'
  | 'inlet'
  | 'outlet'
  | 'valve'
  | 'check-valve';
