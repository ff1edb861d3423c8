/** Says which texts can be a user's key of a record, which the service never gives as an id. */

export const KEY_MAX = 40;

const ID = '[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}';

/** In a path `import` is a command. */
export const KEY_PATTERN = `^(?!(?:import|${ID})$)[a-z0-9](?:[a-z0-9-]{0,${KEY_MAX - 2}}[a-z0-9])?$`;

const key = new RegExp(KEY_PATTERN);
const id = new RegExp(`^${ID}$`, 'i');

export const isKey = (text: string): boolean => key.test(text);

/** Ids of the service have the form of a UUID. */
export const isIdShaped = (text: string): boolean => id.test(text);

export const KEY_RULE = `must be 1 to ${KEY_MAX} of a-z, 0-9 and "-", with no "-" first or last, neither "import" nor shaped like an id`;
