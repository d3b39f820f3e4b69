import { describe, expect, it } from 'vitest';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { smallRecording, smallRecordingParts } from '../../../support/smallRecording';

describe('recordingTrack(document)', () => {
  it('gives the observed joints back, to 0.01 px and 0.001 of confidence', () => {
    const { track } = smallRecordingParts();
    const back = recordingTrack(smallRecording());
    expect([back.widthPx, back.heightPx]).toEqual([track.widthPx, track.heightPx]);
    expect(back.timesMs).toEqual(track.timesMs);
    back.yPx.forEach((yPx, i) => expect(Math.abs(yPx - track.yPx[i]!)).toBeLessThan(0.0051));
    back.score.forEach((score, i) => expect(Math.abs(score - track.score[i]!)).toBeLessThan(0.00051));
  });
});
