import { describe, expect, it } from 'vitest';
import { frameLeg } from '#ui/drawing/frameLeg';
import { smallTrack } from '../../../support/smallTrack';

describe('frameLeg(track, frame, side)', () => {
  const track = smallTrack([
    { left_knee: [210, 330], right_knee: [110, 320], right_ankle: [111, 500, 0.2] },
    null,
  ]);

  it('reads the joints of the wanted leg', () => {
    expect(frameLeg(track, 0, 'left').knee).toEqual({ x: 210, y: 330 });
    expect(frameLeg(track, 0, 'right').knee).toEqual({ x: 110, y: 320 });
  });

  it('leaves out what was seen too badly, and everything where nobody or no frame is', () => {
    expect(frameLeg(track, 0, 'right').ankle).toBeNull();
    const nothing = { hip: null, knee: null, ankle: null, heel: null, toe: null };
    expect(frameLeg(track, 1, 'left')).toEqual(nothing);
    expect(frameLeg(track, -1, 'left')).toEqual(nothing);
    expect(frameLeg(track, 2, 'left')).toEqual(nothing);
  });
});
