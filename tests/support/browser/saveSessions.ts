import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { notAsked } from '#documents/session/notAsked';
import type {} from '#tools/headless/storage';
import type { FromVideo } from '#device/storage/keptSchemas';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { SessionDocument, SessionSet } from '#documents/session/sessionDocument';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { kneeJudged } from '../kneeJudgement';
import { smallSetStart } from '../smallSet';
import { openStoragePage } from './recordedClock';

const fixture = (name: string) => readFileSync(`${projectRoot}fixtures/${name}`, 'utf8');

/** The rendered example: six repetitions with the right leg, by an invented person. */
const example = parseRecording(fixture('example.session.json'));
const planText = fixture('example.plan.json');
const plan = JSON.parse(planText) as { id: string; patient: string };

/** A recording to be saved with the example's video, or without one. */
export interface KeptSet {
  recording: RecordingDocument;
  hasVideo: boolean;
  fromVideo: FromVideo;
  session: SessionDocument | null;
}

const idOf = (letter: string, digit: number) => `${letter}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d1${digit}`;

const lineOf = (recording: RecordingDocument, change: Partial<SessionSet> = {}): SessionSet => ({
  sessionId: recording.id,
  item: 0,
  task: recording.setup.task,
  side: recording.setup.side,
  number: 1,
  prescribedRepetitions: 6,
  painDuring: 2,
  cutShort: null,
  heldMs: null,
  conditions: null,
  ...change,
});

function recordingOf(digit: number, createdAt: string): RecordingDocument {
  return { ...example, id: idOf('7', digit), createdAt };
}

/** The example as recorded by a camera too far to the side. */
function unmeasured(recording: RecordingDocument, count: number): RecordingDocument {
  const judgement = kneeJudged({ verdict: 'not-measured', reason: 'view-turned' });
  const repetitions = recording.derived.repetitions.map((repetition) =>
    repetition.completeness === 'complete' && repetition.number <= count
      ? { ...repetition, judgement }
      : repetition,
  );
  return { ...recording, derived: { ...recording.derived, repetitions } };
}

/**
 * Two sessions of an invented patient with a plan, one of another, and a recording that names nobody.
 *
 * @param secondSet  how far the second set is measured; one that waits is measured as soon as it is viewed
 */
export function demoSessions(secondSet: FromVideo = 'done'): KeptSet[] {
  const sessionOf = (change: Partial<SessionDocument>): SessionDocument => ({
    format: 'overfoot-visit',
    version: 4,
    ...notAsked,
    id: idOf('3', 0),
    startedAt: '2026-04-05T06:07:08.000Z',
    endedAt: '2026-04-05T06:21:08.000Z',
    patient: plan.patient,
    planId: plan.id,
    painBefore: 1,
    painAfter: 2,
    effort: 6,
    remark: '',
    sets: [],
    ...change,
  });
  const [first, second, third] = [1, 2, 3].map((digit) =>
    recordingOf(digit, `2026-04-05T06:0${digit}:00.000Z`),
  );
  const hold: SessionSet = {
    ...lineOf(first!),
    sessionId: null,
    item: 2,
    task: 'quad-press-hold',
    prescribedRepetitions: null,
    heldMs: 90_000,
  };
  const newest = sessionOf({
    remark: 'The second set felt wobbly, and the chair slid a little on the rug.',
    sets: [
      lineOf(first!),
      lineOf(second!, {
        number: 2,
        prescribedRepetitions: 8,
        painDuring: 5,
        cutShort: 'Pain above the limit.',
      }),
      hold,
    ],
  });
  const older = sessionOf({
    id: idOf('3', 1),
    startedAt: '2026-04-03T16:30:00.000Z',
    endedAt: null,
    painAfter: null,
    effort: null,
    sets: [lineOf(third!)],
  });
  const fourth = unmeasured(recordingOf(4, '2026-04-04T10:00:00.000Z'), 4);
  const other = sessionOf({
    id: idOf('3', 2),
    patient: 'Quiet Otter 3',
    planId: null,
    startedAt: '2026-04-04T09:58:00.000Z',
    endedAt: '2026-04-04T10:09:00.000Z',
    painAfter: 0,
    sets: [lineOf(fourth, { painDuring: 0 })],
  });
  const alone = recordingOf(5, '2026-04-01T12:00:00.000Z');
  return [
    { recording: first!, hasVideo: true, fromVideo: 'done', session: newest },
    { recording: second!, hasVideo: true, fromVideo: secondSet, session: newest },
    { recording: third!, hasVideo: false, fromVideo: 'impossible', session: older },
    { recording: fourth, hasVideo: false, fromVideo: 'impossible', session: other },
    { recording: alone, hasVideo: false, fromVideo: 'impossible', session: null },
  ];
}

/** Saves sets as a home session does, and the plan; leaves the page on the storage page. */
export async function saveSessions(page: Page, sets: readonly KeptSet[]): Promise<void> {
  await openStoragePage(page);
  await page.evaluate(
    async ({ json, start, planId, planText }) => {
      const sets = JSON.parse(json) as KeptSet[];
      const { repository } = await window.storagePage.openRepository();
      const video = await (await fetch('../../example/example.mp4')).blob();
      await repository.plans.save(planId, planText);
      for (const { recording, hasVideo, fromVideo, session } of sets) {
        const { id, createdAt } = recording;
        const videoType = hasVideo ? 'video/mp4' : null;
        const begun = { ...start, id, startedAt: createdAt, visitId: session?.id ?? null, videoType };
        const set = await repository.beginSet({ ...begun, visitSet: null }, () => undefined);
        await set.video?.write(video);
        await set.endVideo();
        await set.finish(recording, fromVideo, session);
      }
      repository.close();
    },
    // As text, since the runner carries objects over value by value, which takes seconds for a recording.
    { json: JSON.stringify(sets), start: smallSetStart(), planId: plan.id, planText },
  );
}

/** How many sessions, recordings and videos are saved. */
export async function countKept(
  page: Page,
): Promise<{ sessions: number; recordings: number; videos: number }> {
  await openStoragePage(page);
  return page.evaluate(async () => {
    const { repository } = await window.storagePage.openRepository();
    const [sessions, recordings, videos] = await Promise.all([
      repository.sessions.list(),
      repository.recordings.list(),
      repository.videos.list(),
    ]);
    repository.close();
    return { sessions: sessions.found.length, recordings: recordings.found.length, videos: videos.length };
  });
}
