import { openCamera } from '../../camera/openCamera';
import { openPictureFeed } from '../../live/openPictureFeed';
import { createPoseTracker } from '../../pose/createPoseTracker';
import { createTones } from '../../sound/createTones';
import type { MirrorAdapters } from './createMirror';

/** The browser as the mirror needs it. */
export function browserMirror(baseUrl: string): MirrorAdapters {
  const tones = createTones();
  return {
    openCamera: () => openCamera({ facing: 'front' }),
    openFeed: openPictureFeed,
    createTracker: () => createPoseTracker(baseUrl),
    tone: { unlock: () => tones.unlock(), play: () => tones.play('outside') },
  };
}
