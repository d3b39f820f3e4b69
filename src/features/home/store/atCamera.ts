import { videoBytesPerS } from '#device/camera/recordVideo';
import type { Sound } from '#device/sound/sound';
import { expectVideoBytes } from '../rules/expectVideoBytes';
import type { Habits } from './habits';
import type { HomeAdapters } from './homeAdapters';
import type { CameraChoiceWish } from './homeApp';
import type { HomeCamera } from './homeCamera';
import type { HomeStep } from './homeState';
import type { HomeStorage } from './homeStorage';
import type { HomeStore } from './homeStore';
import { isFilmed } from './sessionOf';

interface AtCameraParts {
  adapters: Pick<HomeAdapters, 'isCameraAllowed' | 'listCameras' | 'tracking'>;
  home: HomeStore;
  storage: Pick<HomeStorage, 'repository' | 'pauseMeasuring'>;
  camera: Pick<HomeCamera, 'open'>;
  sound: Pick<Sound, 'unlock' | 'hasVoice'>;
  habits: Pick<Habits, 'find'>;
}

/** The step 'camera', and switching one on. */
export interface AtCamera {
  /** @param isAgain  switches the camera of last time on where the browser need not ask */
  enter(isAgain: boolean): void;
  open(wish?: CameraChoiceWish): Promise<void>;
}

export function atCamera({ adapters, home, storage, camera, sound, habits }: AtCameraParts): AtCamera {
  const { get, change, enter } = home;
  const isAt = (...steps: HomeStep[]) => steps.includes(get().step);

  const open = async (wish: CameraChoiceWish = { facing: 'front' }) => {
    if (!isAt('camera', 'exercise')) return;
    sound.unlock();
    // In the language of this session.
    home.set({ sound: { ...get().sound, hasVoice: sound.hasVoice() } });
    adapters.tracking.release();
    await storage.pauseMeasuring();
    if (isAt('camera', 'exercise')) await camera.open(wish);
  };
  const usualCamera = async (): Promise<CameraChoiceWish> => {
    const last = (await habits.find()).camera;
    const cameras = await adapters.listCameras().catch(() => []);
    const isThere = cameras.some(({ deviceId }) => deviceId !== '' && deviceId === last?.deviceId);
    return isThere && last !== null ? { deviceId: last.deviceId } : { facing: last?.facing ?? 'front' };
  };
  const openUsual = async () => {
    const wish = (await adapters.isCameraAllowed()) ? await usualCamera() : null;
    const opening = wish === null || get().camera.state !== 'off' ? null : open(wish);
    change('camera', { isLooking: false });
    await opening;
  };
  const lookForRoom = async () => {
    const space = await (await storage.repository).space().catch(() => null);
    const { storage: kept, steps } = get();
    const neededBytes = expectVideoBytes(steps.filter(isFilmed), videoBytesPerS);
    const hasRoom = space === null || kept.state !== 'lasting' || space.freeBytes >= neededBytes;
    change('camera', { hasRoom });
  };

  return {
    enter(isAgain) {
      enter('camera', { isAgain, isLooking: isAgain });
      void lookForRoom();
      if (isAgain) void openUsual();
    },
    open,
  };
}
