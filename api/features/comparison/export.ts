/** Exports comparisons with their site, and imports them. */
import { exportedDocuments } from '../../store/exported-documents.ts';
import { COMPARISONS } from './kind.ts';

export const EXPORTED_COMPARISONS = exportedDocuments('comparison', COMPARISONS);
