import { measure } from '#core/measurement/measure';
import { defaultLimits } from '#core/protocol/limits';
import { sides, type Side } from '#core/protocol/side';
import { seededRandom, type SeededRandom } from '#core/seededRandom';
import { newPatient } from '../patient/newPatient';
import type { PatientDocument } from '../patient/patientDocument';
import { planVersion, type PlanDocument, type RepetitionItem } from '../plan/planDocument';
import { newDraft, newItem } from '../plan/planDraft';
import { buildRecording } from '../recording/buildRecording';
import type { RecordingDocument } from '../recording/recordingDocument';
import { notAsked } from '../session/notAsked';
import { sessionVersion, type SessionDocument, type SessionSet } from '../session/sessionDocument';
import { demoCourses, type DemoCourse, type DemoDay } from './demoCourses';
import { demoNote } from './demoNote';
import { demoFilm, demoRepetitions, demoSetup, demoTrack, type DemoFilm } from './demoTrack';

/** An invented patient without the sessions yet. */
export interface DemoPatient {
  patient: PatientDocument;
  plan: PlanDocument;
  /** One function a session, so that a page stays alive between them; to be called in order. */
  sessions: readonly (() => DemoSession)[];
}

export interface DemoSession {
  session: SessionDocument;
  recordings: RecordingDocument[];
}

export interface DemoClinicParts {
  /** The built-in example, whose person is rendered. */
  example: RecordingDocument;
  /** The last session is on the day before. */
  nowMs: number;
  seed: number;
}

const dayMs = 24 * 3_600_000;
/** The same in all sessions, so that their sets can be compared. */
const demoConditions: NonNullable<SessionSet['conditions']> = {
  stage: 'seat-46',
  seatHeightCm: 46,
  stepHeightCm: null,
  support: 'none',
  load: { kind: 'none' },
  footwear: 'shoes',
  freeLeg: 'behind',
  feedback: 'none',
  isTest: true,
};
const perWeek = 2;
/** Sessions that are new in the list; the earlier ones were looked at. */
const newSessions = 2;

/**
 * Three invented patients over six weeks: a change beyond error, no change, and a flare-up of pain. The same for the
 * same seed and moment. Every figure is measured from the joints of its recording, so that a set opens with the
 * figures that are listed.
 */
export function demoClinic({ example, nowMs, seed }: DemoClinicParts): DemoPatient[] {
  const film = demoFilm(example);
  return demoCourses.map((course, index) => demoPatient(course, film, example, nowMs, seed + index));
}

function demoPatient(
  course: DemoCourse,
  film: DemoFilm,
  example: RecordingDocument,
  nowMs: number,
  seed: number,
): DemoPatient {
  const random = seededRandom(seed);
  const newId = () => seededId(random);
  const { pseudonym, notes, days } = course;
  const lastDay = days.at(-1)!.day;
  const startOf = ({ day }: Pick<DemoDay, 'day'>) =>
    new Date(Math.floor(nowMs / dayMs) * dayMs + (day - lastDay - 1) * dayMs + 17 * 3_600_000);
  const plan = demoPlan(course, newId(), new Date(startOf(days[0]!).getTime() - dayMs), nowMs);
  const ids = days.map(newId);
  const { sinceWeeks, ...noted } = notes;
  const patient: PatientDocument = {
    ...newPatient(pseudonym, newId(), plan.createdAt),
    ...noted,
    note: demoNote,
    since: new Date(Date.parse(plan.createdAt) - sinceWeeks * 7 * dayMs).toISOString().slice(0, 10),
    painRule: { limit: course.painLimit, then: plan.beyondPainLimit },
    plans: [{ id: plan.id, givenAt: plan.createdAt }],
    marks: ids.slice(0, -newSessions).map((visitId, index) => ({
      visitId,
      state: days[index]!.isStopped === true ? 'viewed' : 'settled',
      at: new Date(startOf(days[index]!).getTime() + dayMs).toISOString(),
    })),
  };
  const sessions = days.map((day, index) => () => {
    const isFirst = index === 0;
    const before = isFirst ? null : { ...days[index - 1]!, id: ids[index - 1]! };
    return demoSession({
      day,
      id: ids[index]!,
      startedAt: startOf(day),
      isFirst,
      before,
      course,
      plan,
      film,
      example,
      random,
    });
  });
  return { patient, plan, sessions };
}

function demoPlan(
  { pseudonym, sides: worked, painLimit, usualPain }: DemoCourse,
  id: string,
  createdAt: Date,
  nowMs: number,
): PlanDocument {
  const planned = newItem('split-stance-sit-to-stand') as RepetitionItem;
  return {
    ...newDraft(),
    format: 'overfoot-plan',
    version: planVersion,
    id,
    createdAt: createdAt.toISOString(),
    note: demoNote,
    patient: pseudonym,
    items: [
      {
        ...planned,
        sides: worked,
        sets: 1,
        repetitions: demoRepetitions,
        tempo: null,
        stage: demoConditions.stage,
        seatHeightCm: demoConditions.seatHeightCm,
        support: demoConditions.support,
        load: demoConditions.load,
        feedback: 'none',
      },
    ],
    footwear: 'shoes',
    painLimit,
    usualPain,
    perWeek,
    reviewDate: new Date(nowMs + 4 * dayMs).toISOString().slice(0, 10),
  };
}

interface SessionParts {
  day: DemoDay;
  id: string;
  startedAt: Date;
  isFirst: boolean;
  /** The session before, whose day after is asked about; null for the first. */
  before: (DemoDay & { id: string }) | null;
  course: DemoCourse;
  plan: PlanDocument;
  film: DemoFilm;
  example: RecordingDocument;
  random: SeededRandom;
}

function demoSession(parts: SessionParts): DemoSession {
  const { day, id, startedAt, isFirst, before, course, plan } = parts;
  const [painBefore, painDuring, painAfter] = day.pain;
  const isStopped = day.isStopped === true;
  const done = course.sides.map((side) => {
    const peakDeg = side === 'right' ? day.peakDeg : day.leftDeg;
    const recording = peakDeg === null ? null : demoRecording(parts, side, peakDeg);
    const line: SessionSet = {
      sessionId: recording?.id ?? null,
      item: 0,
      task: parts.film.setup.task,
      side,
      number: 1,
      prescribedRepetitions: demoRepetitions,
      painDuring: side === 'right' ? painDuring : 0,
      cutShort: isStopped ? 'Stopped because of pain.' : null,
      heldMs: null,
      conditions: demoConditions,
    };
    return { recording, line };
  });
  const recordings = done.flatMap(({ recording }) => recording ?? []);
  const session: SessionDocument = {
    format: 'overfoot-visit',
    version: sessionVersion,
    ...notAsked,
    id,
    startedAt: startedAt.toISOString(),
    endedAt: new Date(startedAt.getTime() + 11 * 60_000).toISOString(),
    patient: course.pseudonym,
    planId: plan.id,
    painLimit: course.painLimit,
    painBefore,
    painAfter,
    afterLast:
      before === null
        ? null
        : {
            visitId: before.id,
            worst: before.nextDay,
            swelling: before.nextDay > before.pain[2] ? 'more' : 'same',
          },
    check: { asked: isFirst ? 'all' : 'new', signs: [], takenBack: [] },
    endedBecause: isStopped ? { reason: 'pain', fell: null } : null,
    isUnfilmed: recordings.length === 0,
    effort: day.effort,
    remark: day.remark ?? '',
    sets: done.map(({ line }) => line),
  };
  return { session, recordings };
}

function demoRecording(
  { film, example, random, startedAt, plan }: SessionParts,
  side: Side,
  peakDeg: number,
): RecordingDocument {
  const setup = demoSetup(film, side);
  const track = demoTrack(film, side, peakDeg, random);
  const [item] = plan.items;
  return buildRecording({
    id: seededId(random),
    createdAt: new Date(startedAt.getTime() + sides.indexOf(side) * 60_000),
    note: demoNote,
    limits: item?.kind === 'repetitions' ? item.limits : defaultLimits,
    video: { ...example.video, bytes: 0, durationMs: track.timesMs.at(-1)! },
    model: example.observed.model,
    track,
    measurement: measure(track, setup),
  });
}

/** A UUID of version 4 from seeded digits (RFC 9562, 5.4). */
function seededId(random: SeededRandom): string {
  const digits = Array.from({ length: 32 }, () => Math.floor(16 * random.uniform()));
  digits[12] = 4;
  digits[16] = 8 + (digits[16]! % 4);
  const text = digits.map((digit) => digit.toString(16)).join('');
  return text.replace(/^(.{8})(.{4})(.{4})(.{4})(.{12})$/, '$1-$2-$3-$4-$5');
}
