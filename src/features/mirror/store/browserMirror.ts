import { openCamera } from '#device/camera/openCamera';
import { pickRecordingType } from '#device/camera/pickRecordingType';
import { recordVideo } from '#device/camera/recordVideo';
import { openPictureFeed } from '#device/live/openPictureFeed';
import { createPoseTracker } from '#device/pose/createPoseTracker';
import { createTones } from '#device/sound/createTones';
import { saveBlob } from '#shell/saveBlob';
import type { MirrorAdapters } from './createMirror';

/** The browser as the mirror needs it. */
export function browserMirror(baseUrl: string): MirrorAdapters {
  const tones = createTones();
  return {
    openCamera: () => openCamera({ facing: 'front' }),
    openFeed: openPictureFeed,
    createTracker: () => createPoseTracker(baseUrl),
    recordVideo,
    pickRecordingType: () => pickRecordingType(),
    saveBlob,
    now: () => new Date(),
    tone: { unlock: () => tones.unlock(), play: () => tones.play('outside') },
  };
}
