import { describe, expect, it, vi } from 'vitest';
import type { CameraDevices } from '#device/camera/cameraDevices';
import { CameraProblem, cameraProblemKinds, cameraWayOut } from '#device/camera/cameraProblem';
import { listCameras } from '#device/camera/listCameras';
import { openCamera } from '#device/camera/openCamera';
import { watchCameras } from '#device/camera/watchCameras';

class FakeTrack extends EventTarget {
  readyState = 'live';
  stopped = 0;
  constructor(
    readonly label: string,
    readonly settings: MediaTrackSettings,
  ) {
    super();
  }
  getSettings = () => this.settings;
  stop = () => void this.stopped++;
}

function fakeDevices(answer: unknown, list: Partial<MediaDeviceInfo>[] = []) {
  const asked: MediaStreamConstraints[] = [];
  const target = new EventTarget();
  const devices = {
    getUserMedia(constraints: MediaStreamConstraints) {
      asked.push(constraints);
      if (!(answer instanceof FakeTrack) && answer !== null) return Promise.reject(answer as Error);
      return Promise.resolve({ getVideoTracks: () => (answer === null ? [] : [answer]) });
    },
    enumerateDevices: () => Promise.resolve(list),
    addEventListener: target.addEventListener.bind(target),
    removeEventListener: target.removeEventListener.bind(target),
  } as unknown as CameraDevices;
  return { devices, asked, plug: () => target.dispatchEvent(new Event('devicechange')) };
}

const settings = { deviceId: 'd7', width: 1280, height: 720, frameRate: 30, facingMode: 'user' };

describe('openCamera(wish)', () => {
  it('asks for the side that was wished for, without sound and uncut', async () => {
    const { devices, asked } = fakeDevices(new FakeTrack('Front', settings));
    await openCamera({ facing: 'front' }, devices);
    await openCamera({ facing: 'back' }, devices);
    await openCamera({ deviceId: 'd9' }, devices);
    expect(asked.map(({ audio }) => audio)).toEqual([false, false, false]);
    expect(asked.map(({ video }) => video)).toMatchObject([
      { facingMode: { ideal: 'user' }, width: { ideal: 1280 }, height: { ideal: 720 } },
      { facingMode: { ideal: 'environment' }, frameRate: { ideal: 30 }, resizeMode: { ideal: 'none' } },
      { deviceId: { exact: 'd9' } },
    ]);
  });

  it('gives the facts, as far as the browser does', async () => {
    const { facts } = await openCamera(
      { facing: 'front' },
      fakeDevices(new FakeTrack('Eye', settings)).devices,
    );
    expect(facts).toEqual({
      deviceId: 'd7',
      label: 'Eye',
      facing: 'front',
      widthPx: 1280,
      heightPx: 720,
      frameRateHz: 30,
    });
    const bare = await openCamera(
      { facing: 'back' },
      fakeDevices(new FakeTrack('camera2 0, facing back', {})).devices,
    );
    expect(bare.facts).toMatchObject({ deviceId: '', facing: 'back', widthPx: 0, frameRateHz: 0 });
  });

  const refusals: [string, string][] = [
    ['NotAllowedError', 'refused'],
    ['SecurityError', 'refused'],
    ['NotFoundError', 'none'],
    ['NotReadableError', 'in-use'],
    ['AbortError', 'in-use'],
    ['OverconstrainedError', 'impossible-wish'],
    ['TypeError', 'unknown'],
  ];
  it.each(refusals)('turns a %s into the problem %s', async (name, kind) => {
    const { devices } = fakeDevices(Object.assign(new Error('from the browser'), { name }));
    await expect(openCamera({ facing: 'front' }, devices)).rejects.toMatchObject({ kind });
  });

  it('understands an error that is no Error, and a stream without a picture', async () => {
    const odd = fakeDevices({ name: 'OverconstrainedError', constraint: 'deviceId' });
    await expect(openCamera({ deviceId: 'gone' }, odd.devices)).rejects.toMatchObject({
      kind: 'impossible-wish',
    });
    await expect(openCamera({ facing: 'front' }, fakeDevices(undefined).devices)).rejects.toMatchObject({
      kind: 'unknown',
    });
    await expect(openCamera({ facing: 'front' }, fakeDevices(null).devices)).rejects.toMatchObject({
      kind: 'none',
    });
  });

  it('says what the browser said where nothing is known of it', async () => {
    const { devices } = fakeDevices(Object.assign(new Error('odd'), { name: 'OddError' }));
    await expect(openCamera({ facing: 'front' }, devices)).rejects.toThrow('(OddError: odd)');
  });

  it('recognises an insecure page', async () => {
    vi.stubGlobal('navigator', {});
    vi.stubGlobal('isSecureContext', false);
    await expect(openCamera({ facing: 'front' })).rejects.toMatchObject({ kind: 'insecure-page' });
    await expect(listCameras()).rejects.toMatchObject({ kind: 'insecure-page' });
    vi.unstubAllGlobals();
  });

  it('hears of the end and of silence, until it no longer listens or the camera is closed', async () => {
    const track = new FakeTrack('Eye', settings);
    const camera = await openCamera({ facing: 'front' }, fakeDevices(track).devices);
    const heard: unknown[] = [];
    const stops = [
      camera.onEnded(({ kind }) => heard.push(kind)),
      camera.onMuted((muted) => heard.push(muted)),
    ];
    for (const type of ['mute', 'unmute', 'ended']) track.dispatchEvent(new Event(type));
    expect(heard).toEqual([true, false, 'unplugged']);
    stops.forEach((stop) => stop());
    for (const type of ['mute', 'unmute', 'ended']) track.dispatchEvent(new Event(type));
    expect(heard).toHaveLength(3);
    camera.close();
    track.readyState = 'ended';
    camera.onEnded(() => heard.push('after'));
    await Promise.resolve();
    expect([heard.length, track.stopped]).toEqual([3, 1]);
  });

  it('reports an end that came before anybody listened', async () => {
    const track = new FakeTrack('Eye', settings);
    const camera = await openCamera({ facing: 'front' }, fakeDevices(track).devices);
    track.readyState = 'ended';
    const told = await new Promise<CameraProblem>((resolve) => camera.onEnded(resolve));
    expect(told.kind).toBe('unplugged');
  });
});

describe('CameraProblem', () => {
  it.each(cameraProblemKinds)('of the kind %s says what to do and names the way out', (kind) => {
    const { message } = new CameraProblem(kind);
    expect(message).toMatch(/\b(try again|Choose another)\b|Try again/);
    expect(message.endsWith(cameraWayOut())).toBe(true);
  });
});

describe('listCameras()', () => {
  it('gives cameras only, numbered where they have no name yet', async () => {
    const { devices } = fakeDevices(null, [
      { kind: 'audioinput', deviceId: 'm', label: 'Microphone' },
      { kind: 'videoinput', deviceId: 'a', label: 'Front Camera' },
      { kind: 'videoinput', deviceId: 'b', label: '' },
    ]);
    expect(await listCameras(devices)).toEqual([
      { deviceId: 'a', label: 'Front Camera', facing: 'front' },
      { deviceId: 'b', label: 'Camera 2', facing: null },
    ]);
  });
});

describe('watchCameras(listener)', () => {
  it('hears of changes until it no longer listens', () => {
    const { devices, plug } = fakeDevices(null);
    let heard = 0;
    const stop = watchCameras(() => heard++, devices);
    plug();
    stop();
    plug();
    expect(heard).toBe(1);
  });
});
