import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseRecording } from '#documents/recording/parseRecording';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { checkPlacing } from '#features/home/placing/checkPlacing';
import { createPlacing } from '#features/home/placing/createPlacing';
import { trackUpTo } from '../../../../support/trackUpTo';

const recording = parseRecording(readFileSync('fixtures/example.session.json', 'utf8'));
const track = recordingTrack(recording);
const { setup } = recording;
const facts = { isFurniturePlaced: true };

describe('checkPlacing over the joints of the example recording', () => {
  const live = createPlacing();
  const looks: { atMs: number; ready: boolean; first: string | null }[] = [];
  for (let atMs = 900; atMs < track.timesMs.at(-1)!; atMs += 200) {
    const { ready, first } = live.update(trackUpTo(track, atMs), setup, facts);
    looks.push({ atMs, ready, first: first?.id ?? null });
  }

  it('goes green soon and stays so through seated and standing, as all of its repetitions were measured', () => {
    expect(recording.derived.repetitions.every(({ judgement }) => judgement.reason === null)).toBe(true);
    expect(looks.filter(({ first }) => first !== null)).toEqual([]);
    expect(looks.findIndex(({ ready }) => ready)).toBeLessThanOrEqual(6);
    expect(looks.slice(6).every(({ ready }) => ready)).toBe(true);
  });

  it('asks for the other foot in front where the other side is chosen, while the person sits', () => {
    const other = checkPlacing(trackUpTo(track, 900), { ...setup, side: 'left' }, facts);
    expect(other.first).toMatchObject({
      id: 'working-leg',
      sentence: 'Put your left foot in front of the other.',
    });
  });

  it('is not green once the same joints are seen from nearer, to the side or too dark', () => {
    const seen = trackUpTo(track, 900);
    const nearer = {
      ...seen,
      xPx: seen.xPx.map((x) => 270 + 1.6 * (x - 270)),
      yPx: seen.yPx.map((y) => 480 + 1.6 * (y - 480)),
    };
    expect(checkPlacing(nearer, setup, facts).first).toMatchObject({ id: 'whole-body', arrow: 'farther' });
    const aside = { ...seen, xPx: seen.xPx.map((x) => x + 120) };
    expect(checkPlacing(aside, setup, facts).first).toMatchObject({ id: 'middle', arrow: 'right' });
    expect(
      checkPlacing(seen, setup, { ...facts, brightness: { mean: 0.08, contrast: 0.05 } }).first?.id,
    ).toBe('light');
  });
});
