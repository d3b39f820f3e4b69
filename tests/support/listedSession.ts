import type { Direction } from '#core/scoring/deciding';
import type { Verdict } from '#core/scoring/verdict';
import { notAsked } from '#documents/session/notAsked';
import type { SetMark } from '#features/sessions/rules/buildSetReport';
import type { ListedRecording, ListedSession } from '#features/sessions/rules/listedSession';

/** An invented session in which nothing needs a review, except for the given changes. */
export function listedSession(change: Partial<ListedSession> = {}): ListedSession {
  return {
    kind: 'visit',
    id: '3f4a6d0e-93ff-4a8e-8f8d-5a6c1b2e7d10',
    patient: 'invented-heron',
    startedAt: '2026-04-05T06:07:08.000Z',
    endedAt: '2026-04-05T06:21:08.000Z',
    painBefore: 2,
    painAfter: 1,
    effort: 6,
    remark: '',
    ...notAsked,
    painLimit: 4,
    settlement: null,
    isOpen: false,
    plan: null,
    plannedSets: 1,
    sets: [listedRecording()],
    ...change,
  };
}

/** A measured set of three repetitions in line, except for the given changes. */
export function listedRecording({ line, reading, ...rest }: LineChange = {}): ListedRecording {
  return {
    line: {
      sessionId: '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11',
      item: 0,
      task: 'lateral-step-down',
      side: 'right',
      number: 1,
      prescribedRepetitions: 3,
      painDuring: 2,
      cutShort: null,
      heldMs: null,
      conditions: null,
      ...line,
    },
    reading: reading ?? readingOf(['in', 'in', 'in']),
    limitsSet: null,
    planned: null,
    ...rest,
  };
}

interface LineChange extends Partial<Omit<ListedRecording, 'line'>> {
  line?: Partial<ListedRecording['line']>;
}

export function readingOf(
  verdicts: readonly (Verdict | [Verdict, Direction])[],
): ListedRecording['reading'] & {
  state: 'read';
} {
  const marks = verdicts.map((entry, index): SetMark => {
    const [verdict, direction] = typeof entry === 'string' ? [entry, null] : entry;
    return { number: index + 1, verdict, direction, measure: null };
  });
  const result = { marks, inLine: null, mainReason: null, peak: null };
  return { state: 'read', result, hasVideo: true, isWaiting: false };
}
