import { describe, expect, it } from 'vitest';
import { pickRecordingType } from '#device/camera/pickRecordingType';

describe('pickRecordingType(isSupported)', () => {
  it.each([
    [() => true, 'video/webm;codecs=h264'],
    [(type: string) => !type.includes('h264'), 'video/webm;codecs=vp9'],
    [(type: string) => !/h264|vp9/.test(type), 'video/webm;codecs=vp8'],
    [(type: string) => type.startsWith('video/mp4'), 'video/mp4;codecs=avc1.640028'],
    [(type: string) => type === 'video/mp4', 'video/mp4'],
  ])('takes the first type that the browser records (%#)', (isSupported, type) => {
    expect(pickRecordingType(isSupported)).toBe(type);
  });

  it('says what to do where the browser records none, or has no recorder', () => {
    expect(() => pickRecordingType(() => false)).toThrow(/can’t record video.*open the file here/);
    expect(() => pickRecordingType()).toThrow(expect.objectContaining({ kind: 'no-recorder' }));
  });
});
