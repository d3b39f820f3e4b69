import type { Edition, RecordChange } from './records';
import { storageProblem } from './storageProblem';

/**
 * Refuses a change that is not meant for what is there.
 *
 * @param there  the edition that is kept; null where there is none
 * @throws StorageProblem  'missing' or 'changed'
 */
export function refuseToChange(change: RecordChange, there: Edition | null): void {
  if ('replace' in change && there === null) throw storageProblem('missing');
  if (change.expects !== undefined && change.expects !== there) throw storageProblem('changed');
}
