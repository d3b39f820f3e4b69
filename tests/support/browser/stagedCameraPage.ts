/** Puts a staged camera in the place of the device's own: runs in the page before the program does. */
import type { StagedCamera } from './stagedCameraWorker';
import type { StagedPart } from './stagedFilm';

export interface Stage {
  /** What the next camera that is asked for, and the running one, do. */
  change(wish: Partial<StagedCamera>): void;
  /** From now on this part is shown, whatever the guide asks for; null for what it asks for. */
  show(part: StagedPart | null): void;
  /** Ends the running camera as unplugging does. */
  unplug(): void;
  /** The name of the error with which the next cameras are refused; null for none. */
  refuseWith: string | null;
}

declare global {
  interface Window {
    stage: Stage;
  }
}

/** What somebody does who follows the guide. */
const partOfPhase: Record<string, StagedPart> = {
  ready: 'sit',
  countdown: 'sit',
  working: 'work',
  finishing: 'sit',
};

let camera: StagedCamera = {
  rateHz: 30,
  isFrozen: false,
  isDark: false,
  widthPx: 360,
  heightPx: 640,
  part: 'stand',
};
let asked: StagedPart | null = null;
let worker: Worker | null = null;
let running: MediaStreamTrack | null = null;

window.stage = {
  change(wish) {
    camera = { ...camera, ...wish };
    worker?.postMessage({ camera });
  },
  show(part) {
    asked = part;
    follow();
  },
  unplug() {
    running?.stop();
    running?.dispatchEvent(new Event('ended'));
  },
  refuseWith: null,
};

function follow(): void {
  const phase = document.querySelector<HTMLElement>('.film')?.dataset['phase'] ?? '';
  const part = asked ?? partOfPhase[phase] ?? 'stand';
  if (part !== camera.part) window.stage.change({ part });
}
setInterval(follow, 50);

navigator.mediaDevices.getUserMedia = () => {
  const { refuseWith } = window.stage;
  if (refuseWith !== null) return Promise.reject(new DOMException('staged', refuseWith));
  const track = new MediaStreamTrackGenerator({ kind: 'video' });
  const { writable } = track;
  worker = new Worker('/stagedCamera.js');
  worker.postMessage({ camera, writable }, [writable]);
  running = track;
  return Promise.resolve(new MediaStream([track]));
};
navigator.mediaDevices.enumerateDevices = () => Promise.resolve([]);
