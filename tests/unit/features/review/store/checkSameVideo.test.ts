import { describe, expect, it } from 'vitest';
import { checkSameVideo } from '#features/review/store/checkSameVideo';
import { recordingFacts } from '#shell/tracking/shownRecording';
import { facts } from '../../../../support/fakeAdapters';

describe('checkSameVideo(facts, measured)', () => {
  const measured = recordingFacts(facts);

  it('accepts the video itself, and a re-encoded copy', () => {
    expect(() => checkSameVideo(facts, measured)).not.toThrow();
    expect(() =>
      checkSameVideo({ ...facts, fileBytes: 99, durationMs: facts.durationMs + 300 }, measured),
    ).not.toThrow();
  });

  it('rejects another picture size or duration, and says both', () => {
    expect(() => checkSameVideo({ ...facts, widthPx: 111 }, measured)).toThrow(/it is 111 by \d+ pixels/);
    expect(() => checkSameVideo({ ...facts, durationMs: 1500 }, measured)).toThrow(/1\.5 seconds long, and/);
  });
});
