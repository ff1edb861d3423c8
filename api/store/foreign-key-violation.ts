/** A write that would leave a reference to a row that is not there, in the same words for every database. */
export class ForeignKeyViolation extends Error {
  constructor(options: ErrorOptions) {
    super('a reference to a row that is not there', options);
    this.name = 'ForeignKeyViolation';
  }
}

/** What the work gives, or undefined when a reference prevents it. */
export async function unlessReferenceBroken<T>(work: () => Promise<T>): Promise<T | undefined> {
  try {
    return await work();
  } catch (error) {
    if (error instanceof ForeignKeyViolation) return undefined;
    throw error;
  }
}
