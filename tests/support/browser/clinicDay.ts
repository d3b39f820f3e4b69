import type { Side } from '#core/protocol/side';
import { notAsked } from '#documents/session/notAsked';
import type { SessionDocument, SessionSet } from '#documents/session/sessionDocument';
import { repeatTrack } from '#tools/commands/tools/repeatTrack';
import { filmPerson } from '../syntheticPerson';
import { inventedRecording } from './inventedRecording';
import type { KeptSet } from './saveSessions';

const task = 'split-stance-sit-to-stand';
/** This many are filmed, repeated until a recording has its repetitions. */
const filmedOnce = 15;
const times = 5;
export const repetitionsEach = filmedOnce * times;

/** Peaks, degrees: far within the limit of 10 and far beyond it, so that the verdict is the same whatever the band. */
const peaks = { good: -3, bad: 27 };

interface Exercise {
  /** Day of the year 2026. */
  day: string;
  side: Side;
  /** Of every fifteen repetitions, this many go out of line. */
  badOfFifteen: number;
  /** How long a repetition takes, ms. */
  movingMs: number;
  /** How far to the side the camera was, degrees. */
  yawDeg?: number;
  hasVideo?: boolean;
}

export interface ClinicSession {
  patient: string;
  exercises: Exercise[];
  change: Partial<SessionDocument>;
  line?: Partial<SessionSet>;
  /** What the list says about it; empty where nothing needs a review. */
  flags: string[];
}

const exercise = (day: string, badOfFifteen: number, change: Partial<Exercise> = {}): Exercise => ({
  day,
  side: 'right',
  badOfFifteen,
  movingMs: 2600,
  ...change,
});
const out = (badOfFifteen: number) => `${badOfFifteen * times} of ${repetitionsEach} out of line`;

/**
 * Three invented patients with twelve recordings of 75 repetitions, newest first, each with a reason to
 * review it or none.
 */
export const clinicSessions: ClinicSession[] = [
  {
    patient: 'Amber Finch 2',
    exercises: [
      exercise('04-20', 3, { hasVideo: true }),
      exercise('04-20', 5, { side: 'left', movingMs: 3000, hasVideo: true }),
    ],
    change: {},
    flags: [`${8 * times} of ${2 * repetitionsEach} out of line`],
  },
  { patient: 'Amber Finch 2', exercises: [exercise('04-13', 0)], change: {}, flags: [] },
  {
    patient: 'Amber Finch 2',
    exercises: [exercise('03-20', 6, { movingMs: 3400, hasVideo: true })],
    change: { painAfter: 6 },
    flags: [out(6), 'pain 6, limit 2'],
  },
  { patient: 'Amber Finch 2', exercises: [exercise('03-13', 0)], change: {}, flags: [] },
  { patient: 'Copper Wren 5', exercises: [exercise('04-19', 0)], change: {}, flags: [] },
  {
    patient: 'Copper Wren 5',
    exercises: [exercise('04-12', 0)],
    change: {},
    line: { cutShort: 'The knee gave way.', prescribedRepetitions: 90 },
    flags: ['a set cut short'],
  },
  { patient: 'Copper Wren 5', exercises: [exercise('04-05', 1)], change: {}, flags: [out(1)] },
  { patient: 'Copper Wren 5', exercises: [exercise('03-29', 0)], change: {}, flags: [] },
  {
    patient: 'Slate Plover 9',
    exercises: [exercise('04-18', 0, { yawDeg: 62 })],
    change: {},
    flags: [`${repetitionsEach} of ${repetitionsEach} not measured`],
  },
  { patient: 'Slate Plover 9', exercises: [exercise('04-11', 0)], change: {}, flags: [] },
  { patient: 'Slate Plover 9', exercises: [exercise('04-04', 2)], change: {}, flags: [out(2)] },
];

/** The clinic's sessions as they are saved: invented people, and the data says so. */
export function* clinicSets(): Generator<KeptSet[]> {
  let number = 0;
  for (const { patient, exercises, change, line } of clinicSessions) {
    const sessionId = idOf('e', ++number);
    const sets = exercises.map((done) => ({ recording: recordingOf(done, ++number), done }));
    const day = exercises[0]!.day;
    const session: SessionDocument = {
      format: 'overfoot-visit',
      version: 4,
      ...notAsked,
      id: sessionId,
      startedAt: `2026-${day}T06:00:00.000Z`,
      endedAt: `2026-${day}T06:30:00.000Z`,
      patient,
      planId: null,
      painBefore: 2,
      painAfter: 2,
      effort: 5,
      remark: 'Invented: nobody was treated.',
      sets: sets.map(({ recording: { id, setup } }) => ({
        sessionId: id,
        item: 0,
        task: setup.task,
        side: setup.side,
        number: 1,
        prescribedRepetitions: repetitionsEach,
        painDuring: 2,
        cutShort: null,
        heldMs: null,
        conditions: null,
        ...line,
      })),
      ...change,
    };
    yield sets.map(({ recording, done: { hasVideo = false } }): KeptSet => {
      return { recording, hasVideo, fromVideo: hasVideo ? 'done' : 'impossible', session };
    });
  }
}

/** The middle of the turning point of a repetition that was filmed, ms of the film. */
export function turningMs({ side, badOfFifteen, movingMs }: Exercise, index: number): number {
  const { events } = filmOf({ day: '', side, badOfFifteen, movingMs }, 1).repetitions[index]!;
  return (events.topMs! + events.topEndMs!) / 2;
}

function filmOf({ side, badOfFifteen, movingMs, yawDeg = 0 }: Exercise, seed: number) {
  // Bad ones spread over the set, the second one of all among them.
  const isBad = (index: number) => (index * badOfFifteen) % filmedOnce < badOfFifteen;
  return filmPerson({
    task,
    side,
    seed,
    noisePx: 0.3,
    rateHz: 20,
    camera: { yawDeg, distanceM: 12, focalPx: 6000 },
    repetitions: Array.from({ length: filmedOnce }, (_, index) => ({
      peakDeg: badOfFifteen > 0 && isBad(index) ? peaks.bad : peaks.good,
      movingMs,
    })),
  });
}

function recordingOf(done: Exercise, number: number) {
  const setup = { task, side: done.side } as const;
  const track = repeatTrack(filmOf(done, number).track, times);
  return inventedRecording(idOf('a', number), `2026-${done.day}T06:05:00.000Z`, setup, track);
}

function idOf(letter: string, number: number): string {
  return `${letter}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d${String(number).padStart(2, '0')}`;
}
