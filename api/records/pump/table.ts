/** Makes stored pumps a table. */
import { tableOf } from '../../http/table-of.ts';
import { pumpList } from './schema.ts';

export const pumpTable = tableOf(pumpList, 'items', [
  'id',
  'key',
  'name',
  'version',
  'createdAt',
  'updatedAt',
  { name: 'settingMin', at: 'settings.min' },
  { name: 'settingMax', at: 'settings.max' },
  { name: 'settingStep', at: 'settings.step' },
  'standbyPower',
  'price',
]);
