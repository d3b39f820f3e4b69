import { createBackgroundMeasuring } from '../app/backgroundMeasuring';
import { keepInterrupted } from '../app/keepInterrupted';
import { pickRecordingType } from '../camera/pickRecordingType';
import { recordVideo } from '../camera/recordVideo';
import { openFrameSource } from '../frames/openFrameSource';
import { createPoseTracker } from '../pose/createPoseTracker';
import { poseWeights } from '../pose/poseWeights';
import { openRepository } from '../storage/openRepository';

/** What has to do with keeping recordings, for a test that kills the page in the middle of it. */
const storagePage = {
  openRepository: () => openRepository(),
  pickRecordingType: () => pickRecordingType(),
  recordVideo,
  openFrameSource,
  keepInterrupted,
  createBackgroundMeasuring,
  createTracker: () => createPoseTracker(new URL('../', location.href).href),
  poseWeights,
};
window.storagePage = storagePage;

declare global {
  interface Window {
    storagePage: typeof storagePage;
  }
}
