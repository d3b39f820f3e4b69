import { describe, expect, it } from 'vitest';
import { isCameraAllowed } from '#device/camera/isCameraAllowed';

const saying = (state: PermissionState) => ({
  query: ({ name }: { name: string }) => {
    expect(name).toBe('camera');
    return Promise.resolve({ state } as PermissionStatus);
  },
});

describe('isCameraAllowed(permissions)', () => {
  it('is true only where the browser has given permission before', async () => {
    expect(await isCameraAllowed(saying('granted'))).toBe(true);
    expect(await isCameraAllowed(saying('prompt'))).toBe(false);
    expect(await isCameraAllowed(saying('denied'))).toBe(false);
  });

  it('is false where the browser does not say', async () => {
    expect(await isCameraAllowed({ query: () => Promise.reject(new TypeError('unknown name')) })).toBe(false);
    expect(await isCameraAllowed(null)).toBe(false);
  });
});
