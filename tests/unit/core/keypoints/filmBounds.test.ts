import { describe, expect, it } from 'vitest';
import { filmBounds, filmFault } from '#core/keypoints/filmBounds';

const size = { widthPx: 540, heightPx: 960 };
const times = (count: number, everyMs: number) =>
  Float64Array.from({ length: count }, (_, at) => 700 + at * everyMs);

describe('filmFault(film)', () => {
  it('is null for what can be measured, up to the bounds', () => {
    expect(filmFault(size)).toBeNull();
    expect(filmFault({ ...size, timesMs: [] })).toBeNull();
    expect(filmFault({ ...size, timesMs: times(filmBounds.frames, 1000 / 60) })).toBeNull();
    expect(filmFault({ ...size, timesMs: times(181, 10_000) })).toBeNull();
    expect(filmFault({ widthPx: 64, heightPx: 512 })).toBeNull();
  });

  it.each([
    [times(filmBounds.frames + 1, 1), 'frames'],
    [times(182, 10_000), 'length'],
    [[0, 24 * 3_600_000], 'length'],
    [[0, 33, 10_034], 'gaps'],
    [[0, NaN], 'length'],
  ])('says what is out of bounds (%#)', (timesMs, kind) => {
    expect(filmFault({ ...size, timesMs })).toEqual({ kind });
  });

  it.each([
    [16_384, 1],
    [1, 16_384],
    [1, 1],
    [63, 63],
    [0, 0],
    [20_000, 20_000],
    [NaN, 100],
  ])('refuses pictures of %i by %i px', (widthPx, heightPx) => {
    expect(filmFault({ widthPx, heightPx, timesMs: [0, 33] })).toEqual({
      kind: 'picture',
      widthPx,
      heightPx,
    });
  });
});
