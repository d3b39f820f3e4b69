import type { PoseModel } from '#core/keypoints/poseModel';
import { CameraProblem } from '../camera/cameraProblem';
import type { PoseTracker } from '../pose/poseTracker';
import { decideLive, type LiveDecision } from './decideLive';
import type { PictureFeed } from './pictureFeed';
import { startLiveLoop } from './startLiveLoop';

/** How fast this device tracks its camera's pictures. */
export interface DeviceCheck {
  decision: LiveDecision;
  /** Pictures a second. */
  fullFps: number;
  /** Null where the full model was fast enough. */
  liteFps: number | null;
  /** Pictures a second that the camera delivered in the last two seconds. */
  cameraFps: number;
  /**
   * Whether most pictures showed a person; without one the rate means less, so check again when somebody is
   * there.
   */
  hasPerson: boolean;
}

interface CheckParts {
  /** Opens a feed of the running camera; each is closed here. */
  openFeed: () => PictureFeed;
  /** Afterwards the chosen model is loaded. */
  tracker: Pick<PoseTracker, 'load' | 'estimate' | 'reset'>;
  now?: () => number;
  wait?: (ms: number) => Promise<void>;
}

/** How long each model is measured, ms. */
const measuredMs = 2000;
/** The first pictures after loading take longer than any later one, and do not count. */
const warmUps = 3;
/**
 * A camera that delivers nothing for this long is not responding, and a device not warmed up by then is too
 * slow, ms.
 */
const patienceMs = 15_000;

/**
 * Measures how fast this device tracks a running camera's pictures: two seconds with the full model and, where that is
 * too slow, two with the lite one.
 *
 * @throws CameraProblem  where the camera ends or delivers no pictures; whatever the tracker throws
 */
export async function checkDevice(parts: CheckParts): Promise<DeviceCheck> {
  const full = await paceOf('full', parts);
  const withFull = decideLive(full.fps, null);
  if (withFull !== null) return describe(withFull, full, null);
  const lite = await paceOf('lite', parts);
  return describe(decideLive(full.fps, lite.fps)!, full, lite);
}

interface Pace {
  fps: number;
  cameraFps: number;
  hasPerson: boolean;
}

function describe(decision: LiveDecision, full: Pace, lite: Pace | null): DeviceCheck {
  const { cameraFps, hasPerson } = lite ?? full;
  return { decision, fullFps: full.fps, liteFps: lite?.fps ?? null, cameraFps, hasPerson };
}

async function paceOf(model: PoseModel, parts: CheckParts) {
  const { openFeed, tracker, now = () => performance.now(), ...waiting } = parts;
  await tracker.load(model);
  return new Promise<Pace>((resolve, reject) => {
    let frames = -warmUps;
    let withPerson = 0;
    let fromMs = 0;
    let timer = setTimeout(() => {
      const { seenFps } = loop.rates();
      const slowest = { fps: 0, cameraFps: seenFps, hasPerson: false };
      settle(seenFps === 0 ? new CameraProblem('in-use') : slowest);
    }, patienceMs);
    const settle = (outcome: Pace | Error) => {
      clearTimeout(timer);
      loop.stop();
      if (outcome instanceof Error) reject(outcome);
      else resolve(outcome);
    };
    const finish = () => {
      const fps = (frames * 1000) / (now() - fromMs);
      settle({ fps, cameraFps: loop.rates().seenFps, hasPerson: withPerson > frames / 2 });
    };
    const loop = startLiveLoop({
      feed: openFeed(),
      tracker,
      now,
      ...waiting,
      onFrame({ row }) {
        frames++;
        if (frames === 0) {
          fromMs = now();
          clearTimeout(timer);
          // Ends by itself where a single picture takes longer than all the time available.
          timer = setTimeout(finish, 2 * measuredMs);
        }
        if (frames <= 0) return;
        if (row !== null) withPerson++;
        if (now() - fromMs >= measuredMs) finish();
      },
    });
    loop.ended.then(() => settle(new CameraProblem('unplugged')), settle);
  });
}
