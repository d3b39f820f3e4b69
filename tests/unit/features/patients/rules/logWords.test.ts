import { describe, expect, it } from 'vitest';
import type { LogStanding } from '#documents/patient/checkedLog';
import type { LogEntry } from '#documents/patient/logEntry';
import { isPutAway, noteName } from '#features/patients/rules/alsoNoted';
import { logSentence, standingWords } from '#features/patients/rules/logWords';
import { listedRecording, listedSession } from '../../../../support/listedSession';

const recordingId = '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d12';
const first = listedRecording();
const session = listedSession({
  startedAt: '2026-04-05T12:00:00.000Z',
  sets: [{ ...first, line: { ...first.line, sessionId: recordingId, side: 'left' } }],
});
const entry = (what: LogEntry['what'], about: string): LogEntry => ({
  id: '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66',
  at: '2026-04-06T12:00:00.000Z',
  by: 'AB',
  what,
  about,
  after: [],
  key: 'key',
  signature: 'signature',
});
const record = { decisions: [], handOvers: [] };

describe('logSentence(entry, record, sessions)', () => {
  it('names the set or session, or says that it is no longer kept', () => {
    expect(logSentence(entry('limits', recordingId), record, [session])).toBe(
      'changed the limits of lateral step-down, left leg, Sun 5 Apr 2026',
    );
    expect(logSentence(entry('concern-settled', session.id), record, [session])).toBe(
      'settled what was said of the body in the session of Sun 5 Apr 2026',
    );
    expect(logSentence(entry('review-withdrawn', session.id), record, [session])).toBe(
      'opened again what was settled in the session of Sun 5 Apr 2026',
    );
    expect(logSentence(entry('review-withdrawn', recordingId), record, [session])).toBe(
      'took back the mark “reviewed” of lateral step-down, left leg, Sun 5 Apr 2026',
    );
    expect(logSentence(entry('taken', recordingId), record, [session])).toBe(
      'said that a colleague’s record under this pseudonym is of the same person',
    );
    expect(logSentence(entry('review', recordingId), record, [])).toBe(
      'marked as reviewed a set that is no longer kept here',
    );
  });
});

describe('standingWords(line)', () => {
  it('says which device signed, and never that something fits that does not', () => {
    const line = { entry: entry('review', recordingId), isOwn: true };
    expect(standingWords({ ...line, standing: 'fits' })).toBe('signed on this device');
    expect(standingWords({ ...line, standing: 'fits', isOwn: false })).toBe('signed on another device');
    expect(standingWords({ ...line, standing: 'wrong' })).toMatch(/^the signature does not fit/);
  });
});

describe('isPutAway(note, log)', () => {
  const note = { at: '2026-04-05T12:00:00.000Z', by: 'KN' };
  const line = (what: LogEntry['what'], standing: LogStanding = 'fits') => ({
    entry: entry(what, noteName(note)),
    standing,
    isOwn: true,
  });
  const log = (...entries: ReturnType<typeof line>[]) => ({ entries, missing: 0 });

  it('is what the latest entry says that fits', () => {
    expect(isPutAway(note, log())).toBe(false);
    expect(isPutAway(note, log(line('note-put-away')))).toBe(true);
    expect(isPutAway(note, log(line('note-put-away'), line('note-put-back')))).toBe(false);
    expect(isPutAway(note, log(line('note-put-away', 'wrong')))).toBe(false);
    expect(isPutAway({ ...note, by: 'XY' }, log(line('note-put-away')))).toBe(false);
  });

  it('is said with who noted it, and when', () => {
    expect(logSentence(entry('note-put-away', noteName(note)), record, [])).toBe(
      'put away what KN noted on Sun 5 Apr 2026',
    );
  });
});
