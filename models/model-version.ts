/** The version of the formulas: raised whenever a figure of an unchanged loop or pump may change. */
export const MODEL_VERSION = '1';
