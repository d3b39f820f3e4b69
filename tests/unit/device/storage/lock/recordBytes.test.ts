import { describe, expect, it } from 'vitest';
import { bytesOfRecord, recordOfBytes } from '#device/storage/lock/recordBytes';

describe('bytesOfRecord(value), recordOfBytes(bytes)', () => {
  it('gives back documents and rows with their typed arrays, values exactly', () => {
    const value = {
      timesMs: Float64Array.of(0, 1 / 3, 1e300),
      found: Uint8Array.of(1, 0),
      values: Float32Array.of(0.1, -5),
      text: 'é "quoted" <script>',
      nested: [null, true, { deep: 1.5 }],
    };
    expect(recordOfBytes(bytesOfRecord(value))).toEqual(value);
  });

  it('reads a part of a longer buffer as that part alone', () => {
    const part = Float32Array.of(1, 2, 3, 4).subarray(1, 3);
    expect(recordOfBytes(bytesOfRecord({ part }))).toEqual({ part: Float32Array.of(2, 3) });
  });

  it('throws where the bytes are no record', () => {
    expect(() => recordOfBytes(Uint8Array.of(123, 1))).toThrow(SyntaxError);
  });
});
