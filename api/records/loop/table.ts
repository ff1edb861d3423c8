/** Makes stored loops a table. */
import { tableOf } from '../../http/table-of.ts';
import { loopList } from './schema.ts';

export const loopTable = tableOf(loopList, 'items', [
  'id',
  'key',
  'name',
  'version',
  'createdAt',
  'updatedAt',
  'pumpElevation',
]);
