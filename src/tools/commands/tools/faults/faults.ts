import { fileFaults } from './fileFaults';
import { homeFaults } from './homeFaults';
import { killFaults } from './killFaults';
import type { Fault } from './runFault';
import { sceneFaults } from './sceneFaults';
import { screenFaults } from './screenFaults';
import { storageFaults } from './storageFaults';
import { tabFaults } from './tabFaults';
import { transferFaults } from './transferFaults';
import { writeFaults } from './writeFaults';

/** Every fault that is tried, with names that stand in docs/reliability.md. */
export const faults: readonly Fault[] = [
  ...storageFaults,
  ...writeFaults,
  ...transferFaults,
  ...tabFaults,
  ...killFaults,
  ...screenFaults,
  ...fileFaults,
  ...homeFaults,
  ...sceneFaults,
];
