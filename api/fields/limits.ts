/** How long a list in a document may be. */

export const LIST_MAX = 500;
export const RUN_MAX = 200;
export const BRANCHES_MAX = 2_000;
export const BRANCH_DEPTH_MAX = 32;
export const SETTINGS_MAX = 10_001;
export const CANDIDATES_MAX = 10_000;
export const READINGS_MAX = 50_000;
