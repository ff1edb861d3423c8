/** The version of the program, as package.json states it. */
export const VERSION = '0.1.0';
