import { describe, expect, it } from 'vitest';
import { withLimit } from '#core/protocol/limits';
import { parseRecording } from '#documents/recording/parseRecording';
import { film, recordingText } from '../../../../support/fakeAdapters';
import { keptReview, startReview, trackedReview } from '../../../../support/startReview';

const recording = new File([recordingText], 'any.json', { type: 'application/json' });

describe('saveRecording()', () => {
  it('saves a document that reads back, with the limits in force and nobody’s name', async () => {
    const { review, world } = await trackedReview();
    review.moveLimits(withLimit(review.store.getState().limits, 'knee-angle', 'most', 14));
    review.endLimitMove();
    review.saveRecording();
    const [{ fileName, text }] = world.saved as [{ fileName: string; text: string }];
    expect(fileName).toBe('overfoot-session-2026-05-06.json');
    expect(text).not.toContain('stairs');
    const document = parseRecording(text);
    expect(document.limits).toEqual({ 'knee-angle': { least: -10, most: 14 } });
    expect(document.derived.repetitions).toHaveLength(3);
  });

  it('writes corrections into the file', async () => {
    const { review, world, middleOf } = await keptReview();
    review.correct({ kind: 'exclude', atMs: middleOf(2), reason: 'Somebody walked by.' });
    review.saveRecording();
    const document = parseRecording(world.saved.at(-1)!.text);
    expect(document.corrections).toHaveLength(1);
    expect(document.derived.repetitions[2]!.excluded).toBe('Somebody walked by.');
  });
});

describe('saveTable(rows)', () => {
  it('saves one row per repetition, judged by the limits in force, under a file name that identifies nobody', async () => {
    const { review, world } = startReview();
    await review.openFile(recording);
    review.moveLimits(withLimit(review.store.getState().limits, 'knee-angle', 'most', 30));
    review.saveTable('repetitions');
    const [file] = world.saved;
    expect(file!.fileName).toBe('overfoot-repetitions-2026-05-06.csv');
    const lines = file!.text.split('\r\n');
    expect(lines).toHaveLength(1 + 3 + 1);
    expect(lines[3]).toContain(',30,10,');
    expect(lines[3]).not.toContain('out');
    expect(lines[1]).toMatch(/,Invented: a made-up person\.$/);
  });

  it('saves one row per frame', async () => {
    const { review, world } = startReview();
    await review.openFile(recording);
    review.saveTable('frames');
    const [file] = world.saved;
    expect(file!.fileName).toBe('overfoot-frames-2026-05-06.csv');
    expect(file!.text.split('\r\n')).toHaveLength(1 + film.track.timesMs.length + 1);
  });

  it('does nothing where nothing is shown', () => {
    const { review, world } = startReview();
    review.saveTable('frames');
    expect(world.saved).toEqual([]);
  });
});
