/** Bounds how much a document holds, and how much an answer says about its faults. */

export const LIST_MAX = 500;
export const RUN_MAX = 200;
export const BRANCHES_MAX = 2_000;
export const BRANCH_DEPTH_MAX = 32;
export const SETTINGS_MAX = 10_001;
export const CANDIDATES_MAX = 10_000;
export const READINGS_MAX = 50_000;

/** Finding faults costs more than reading what is right, and whoever corrects ten of them asks again. */
export const FAULTS_MAX = 10;
