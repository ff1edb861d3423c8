/** Exports tariffs with their site, and imports them. */
import { exportedDocuments } from '../../store/exported-documents.ts';
import { TARIFFS } from './kind.ts';

export const EXPORTED_TARIFFS = exportedDocuments('tariff', TARIFFS);
