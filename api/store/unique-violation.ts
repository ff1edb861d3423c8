/** A write that would give two rows what only one may have, in the same words for every database. */
export class UniqueViolation extends Error {
  constructor(options: ErrorOptions) {
    super('two rows with what only one may have', options);
    this.name = 'UniqueViolation';
  }
}
