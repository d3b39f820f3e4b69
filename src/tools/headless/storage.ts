import '#app/trustedScripts';
import { pickRecordingType } from '#device/camera/pickRecordingType';
import { recordVideo } from '#device/camera/recordVideo';
import { openFrameSource } from '#device/frames/openFrameSource';
import { createPoseTracker } from '#device/pose/createPoseTracker';
import { poseWeights } from '#device/pose/poseWeights';
import { openRepository } from '#device/storage/openRepository';
import { createBackgroundMeasuring } from '#features/home/store/backgroundMeasuring';
import { recoverInterrupted } from '#features/home/store/recoverInterrupted';
import { seedClinic } from './seedClinic';

/** The saving of recordings, for a test that kills the page in the middle of it. */
const storagePage = {
  openRepository: () => openRepository(),
  pickRecordingType: () => pickRecordingType(),
  recordVideo,
  openFrameSource,
  recoverInterrupted,
  createBackgroundMeasuring,
  createTracker: () => createPoseTracker(new URL('../../', location.href).href),
  poseWeights,
  seedClinic,
};
window.storagePage = storagePage;

declare global {
  interface Window {
    storagePage: typeof storagePage;
  }
}
