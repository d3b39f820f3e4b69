import type { Camera, CameraChoice, CameraWish } from '#device/camera/camera';
import type { AwakeState } from '#device/camera/keepAwake';
import type { recordVideo } from '#device/camera/recordVideo';
import type { OpenFrameSource } from '#device/frames/frameSource';
import type { checkDevice } from '#device/live/checkDevice';
import type { BendsReader } from '#device/live/createBendsReader';
import type { PictureFeed } from '#device/live/pictureFeed';
import type { startLiveSet } from '#device/live/startLiveSet';
import type { PoseTracker } from '#device/pose/poseTracker';
import type { CaptionListener, Sound } from '#device/sound/sound';
import type { OpenedRepository } from '#device/storage/openRepository';
import type { Repository } from '#device/storage/repository';
import type { PatientLanguage } from '#shell/language/createPatientLanguage';
import type { Navigation } from '#shell/navigation/createNavigation';
import type { Tracking } from '#shell/tracking/createTracking';
import type { Brightness } from '../placing/placing';
import type { BackgroundMeasuring } from './backgroundMeasuring';

/** What a home session needs from the world around it; tests hand in plain objects. */
export interface HomeAdapters {
  openRepository: () => Promise<OpenedRepository>;
  createBackground: (repository: Repository) => BackgroundMeasuring;
  openCamera: (wish: CameraWish) => Promise<Camera>;
  listCameras: () => Promise<CameraChoice[]>;
  /** Whether a camera opens without the person being asked. */
  isCameraAllowed: () => Promise<boolean>;
  /** Hears when cameras come and go; returns the way to stop. */
  watchCameras: (listener: () => void) => () => void;
  openFeed: (stream: MediaStream) => PictureFeed;
  /** Of a picture that stays open; null where it can't be read. */
  readBrightness: (picture: ImageBitmap) => Brightness | null;
  checkDevice: typeof checkDevice;
  createTracker: () => PoseTracker;
  startLiveSet: typeof startLiveSet;
  createBendsReader: () => BendsReader;
  recordVideo: typeof recordVideo;
  /** Throws a RecordingProblem where this browser can't record. */
  pickRecordingType: () => string;
  openFrameSource: OpenFrameSource;
  createSound: (onCaption: CaptionListener) => Sound;
  keepAwake: (onState: (state: AwakeState) => void) => () => void;
  watchPage: (listener: (isVisible: boolean) => void) => () => void;
  fetchExamplePlan: () => Promise<string>;
  /** Makes the key with which this device signs the sessions of a plan, where there is none; never rejects. */
  prepareSigning: (planId: string) => Promise<unknown>;
  saveFile: (fileName: string, text: string) => void;
  /** Package and version that the network's weights come from. */
  weights: string;
  newId: () => string;
  now: () => Date;
  /** Any clock that only goes forward, the same as that of the camera's pictures, ms. */
  clockMs: () => number;
  /** Calls again and again; returns the way to stop. */
  every: (ms: number, call: () => void) => () => void;
  /** The language of the patient's pages, which a plan names. */
  language: Pick<PatientLanguage, 'follow'>;
  /** The program around the home session. */
  navigation: Pick<Navigation, 'store' | 'screen' | 'returnTo' | 'guard'>;
  /** The page's own pose network: for videos from the device's camera app. */
  tracking: Pick<Tracking, 'trackFile' | 'release'>;
}
