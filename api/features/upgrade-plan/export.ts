/** Exports upgrade plans with their site, and imports them. */
import { exportedDocuments } from '../../store/exported-documents.ts';
import { UPGRADE_PLANS } from './kind.ts';

export const EXPORTED_UPGRADE_PLANS = exportedDocuments('upgrade_plan', UPGRADE_PLANS);
