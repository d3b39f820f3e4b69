import { inTime } from '../inTime';
import type { Records } from './records';
import type { Shelves } from './shelves';
import { storageProblem } from './storageProblem';
import type { Videos } from './videos';

/** A database that an older tab blocks may never answer; opening one takes milliseconds. */
const openWithinMs = 4000;

/**
 * Shelves that end in a problem, 'silent', where opening takes too long. Records that open afterwards are closed.
 *
 * @param withinMs  how long each step may take
 */
export function createTimelyShelves(shelves: Shelves, withinMs = openWithinMs): Shelves {
  const tooLate = () => storageProblem('silent');
  return {
    ...shelves,
    list: () => inTime(shelves.list(), withinMs, tooLate),
    openRecords: (shelf) =>
      inTime<Records>(shelves.openRecords(shelf), withinMs, tooLate, ({ close }) => close()),
    openVideos: (shelf) => inTime<Videos>(shelves.openVideos(shelf), withinMs, tooLate),
    storageOf: (shelf) => inTime(shelves.storageOf(shelf), withinMs, tooLate),
  };
}
