/** Makes stored tariffs a table. */
import { tableOf } from '../../http/table-of.ts';
import { tariffList } from './schema.ts';

export const tariffTable = tableOf(tariffList, 'items', [
  'id',
  'key',
  'name',
  'version',
  'createdAt',
  'updatedAt',
]);
