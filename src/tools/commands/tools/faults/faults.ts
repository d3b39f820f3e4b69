import { fileFaults } from './fileFaults';
import { homeFaults } from './homeFaults';
import type { Fault } from './runFault';
import { screenFaults } from './screenFaults';
import { storageFaults } from './storageFaults';
import { writeFaults } from './writeFaults';

/** Every fault that is tried, with names that stand in docs/reliability.md. */
export const faults: readonly Fault[] = [
  ...storageFaults,
  ...writeFaults,
  ...screenFaults,
  ...fileFaults,
  ...homeFaults,
];
