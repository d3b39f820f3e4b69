import { isCameraAllowed } from '#device/camera/isCameraAllowed';
import { keepAwake } from '#device/camera/keepAwake';
import { listCameras } from '#device/camera/listCameras';
import { openCamera } from '#device/camera/openCamera';
import { pickRecordingType } from '#device/camera/pickRecordingType';
import { recordVideo } from '#device/camera/recordVideo';
import { watchCameras } from '#device/camera/watchCameras';
import { watchPage } from '#device/camera/watchPage';
import { openFrameSource } from '#device/frames/videosOnDemand';
import { checkDevice } from '#device/live/checkDevice';
import { createBendsReader } from '#device/live/createBendsReader';
import { openPictureFeed } from '#device/live/openPictureFeed';
import { startLiveSet } from '#device/live/startLiveSet';
import { createPoseTracker } from '#device/pose/createPoseTracker';
import { poseWeights } from '#device/pose/poseWeights';
import { createSound } from '#device/sound/createSound';
import { openSenderKeys } from '#device/storage/senderKeys';
import { deviceSigner } from '#shell/deviceSigner';
import { fetchExamplePlan } from '#shell/fetchExample';
import { saveFile } from '#shell/saveFile';
import { createBackgroundMeasuring } from './backgroundMeasuring';
import { createBrightnessReader } from './createBrightnessReader';
import type { HomeAdapters } from './homeAdapters';

/**
 * The browser as a home session needs it.
 *
 * @param baseUrl  of the program, with a slash at its end
 * @param openRepository  gives the one repository of this page
 */
export function browserWorld(
  baseUrl: string,
  { tracking, navigation, language }: Pick<HomeAdapters, 'tracking' | 'navigation' | 'language'>,
  openRepository: HomeAdapters['openRepository'],
): HomeAdapters {
  const createTracker = () => createPoseTracker(baseUrl);
  return {
    openRepository,
    createBackground: (repository) =>
      createBackgroundMeasuring({ repository, openFrameSource, createTracker, weights: poseWeights }),
    openCamera: (wish) => openCamera(wish),
    listCameras: () => listCameras(),
    isCameraAllowed: () => isCameraAllowed(),
    watchCameras: (listener) => watchCameras(listener),
    openFeed: openPictureFeed,
    readBrightness: createBrightnessReader(),
    checkDevice,
    createTracker,
    startLiveSet,
    createBendsReader,
    recordVideo,
    pickRecordingType: () => pickRecordingType(),
    openFrameSource,
    createSound: (onCaption) => createSound(onCaption),
    keepAwake: (onState) => keepAwake(onState),
    watchPage: (listener) => watchPage(listener),
    fetchExamplePlan: () => fetchExamplePlan(`${baseUrl}example/`),
    prepareSigning: deviceSigner(openSenderKeys()),
    saveFile,
    weights: poseWeights,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
    clockMs: () => performance.now(),
    every(ms, call) {
      const timer = setInterval(call, ms);
      return () => clearInterval(timer);
    },
    tracking,
    navigation,
    language,
  };
}
