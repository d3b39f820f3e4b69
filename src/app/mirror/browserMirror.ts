import { openCamera } from '../../camera/openCamera';
import { pickRecordingType } from '../../camera/pickRecordingType';
import { recordVideo } from '../../camera/recordVideo';
import { openPictureFeed } from '../../live/openPictureFeed';
import { createPoseTracker } from '../../pose/createPoseTracker';
import { createTones } from '../../sound/createTones';
import { saveBlob } from '../saveBlob';
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
