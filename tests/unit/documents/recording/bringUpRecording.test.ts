import { describe, expect, it } from 'vitest';
import { buildRecording } from '#documents/recording/buildRecording';
import { parseRecording } from '#documents/recording/parseRecording';
import { smallRecordingParts } from '../../../support/smallRecording';

describe('parseSession(text) of an older version', () => {
  const present = buildRecording(smallRecordingParts());
  const oldView = Object.fromEntries(
    Object.entries(present.derived.view!).filter(([name]) => name !== 'rollDeg'),
  );
  const repetitions = present.derived.repetitions.map(({ judgement, ...repetition }) => {
    const { decidedBy, knee, measures, ...older } = judgement;
    return { ...repetition, judgement: older };
  });
  const derived = { ...present.derived, repetitions };
  const old = { ...present, version: 1, derived: { ...derived, view: oldView } };

  it('reads a document of version 1, which took no roll out', () => {
    const read = parseRecording(JSON.stringify(old));
    expect(read.version).toBe(present.version);
    expect(read.derived.view).toEqual({ ...present.derived.view, rollDeg: 0 });
    expect({ ...read, derived: null }).toEqual({ ...present, derived: null });
  });

  it('reads a document of version 2, in which all of the recording is the set', () => {
    expect(parseRecording(JSON.stringify({ ...present, version: 2, derived }))).toEqual(present);
  });

  it('reads a document of version 4, in which no limits were taken over', () => {
    expect(parseRecording(JSON.stringify({ ...present, version: 4, derived }))).toEqual(present);
  });

  it('reads a document of version 5, in which a verdict was the knee’s alone', () => {
    expect(derived.repetitions.length).toBeGreaterThan(0);
    expect(parseRecording(JSON.stringify({ ...present, version: 5, derived }))).toEqual(present);
  });

  it('reads one in which the leg was never seen', () => {
    const unseen = { ...old, derived: { ...old.derived, view: null } };
    expect(parseRecording(JSON.stringify(unseen)).derived.view).toBeNull();
  });
});
