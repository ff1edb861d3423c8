/** Carries the version of the formulas, which rises whenever a figure of an unchanged loop or pump may change. */
export const MODEL_VERSION = '2';
