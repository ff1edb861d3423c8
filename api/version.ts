/** Holds the version of the program, which is that of package.json. */
export const VERSION = '0.1.0';
