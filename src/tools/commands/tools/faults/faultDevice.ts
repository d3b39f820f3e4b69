import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from '@playwright/test';
import { notAsked } from '#documents/session/notAsked';
import { sessionVersion } from '#documents/session/sessionDocument';
import { deviceOf } from '../deviceOf';
import type {} from '../../../headless/storage';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { stageCamera } from '../../../../../tests/support/browser/stageCamera';
import { projectRoot } from '../projectRoot';

/** What lies on a device, by what it is: a session, a recording with its review, a plan, a video. */
export type Kept = Record<string, string>;

/** A device with three sets of two invented patients, on which a fault is tried. */
export interface FaultDevice {
  readonly context: BrowserContext;
  readonly sessions: readonly [SessionDocument, SessionDocument];
  readonly recordings: readonly RecordingDocument[];
  /** A new tab of the program. @param prepare  runs in it before anything of the program does */
  open(prepare?: () => void): Promise<Page>;
  /** A new tab in which the program's storage can be called. */
  openStorage(prepare?: () => void): Promise<Page>;
  /** What is kept now, read in a tab of its own. */
  kept(): Promise<Kept>;
}

const example = parseRecording(readFileSync(join(projectRoot, 'fixtures/example.session.json'), 'utf8'));
export const idOf = (letter: string, digit: number) => `${letter}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d1${digit}`;

/**
 * @param hasCamera  whether it has a staged camera, whose joints are known; then joints of files are known, too
 * @param tookMs  how long the search for those joints takes for each picture, ms
 * @param options  of the browser, such as permissions
 */
export async function openFaultDevice(
  browser: Browser,
  url: string,
  {
    hasCamera = false,
    tookMs = 0,
    ...options
  }: { hasCamera?: boolean; tookMs?: number } & BrowserContextOptions = {},
): Promise<FaultDevice> {
  const staged = { bypassCSP: true, viewport: { width: 390, height: 844 } };
  const context = await browser.newContext({
    baseURL: url,
    storageState: deviceOf('treats', url),
    viewport: { width: 1440, height: 900 },
    serviceWorkers: 'block', // Else each would keep 20 MB.
    ...(hasCamera ? staged : {}),
    ...options,
  });
  // Functions that run in a page were compiled with a helper that it does not have.
  await context.addInitScript('globalThis.__name = (named) => named');
  if (hasCamera) await stageCamera(context, tookMs);
  const recordings = [1, 2, 3].map((digit) => ({ ...example, id: idOf('7', digit) }));
  const sessions = [
    sessionOf(1, 'Blue Heron 7', recordings.slice(0, 2)),
    sessionOf(2, 'Quiet Otter 3', recordings.slice(2)),
  ] as const;
  const openAt = async (place: string, prepare?: () => void) => {
    const page = await context.newPage();
    if (prepare !== undefined) await page.addInitScript(prepare);
    await page.goto(place);
    return page;
  };
  const openStorage = async (prepare?: () => void) => {
    const page = await openAt('tools/headless/storage.html', prepare);
    await page.waitForFunction(() => 'storagePage' in window);
    return page;
  };

  const page = await openStorage();
  await page.evaluate(
    async ({ sessions, recordings }) => {
      const { repository } = await window.storagePage.openRepository();
      const video = await (await fetch('../../example/example.mp4')).blob();
      for (const session of sessions) {
        const own = recordings.filter(({ id }) => session.sets.some(({ sessionId }) => sessionId === id));
        await repository.keepTogether(
          session,
          own.map((recording) => ({ recording, visitId: session.id, fromVideo: 'done', video })),
        );
      }
      await repository.plans.save('plan', '{"patient":"Blue Heron 7"}');
      repository.close();
    },
    { sessions, recordings },
  );
  await page.close();

  return {
    context,
    sessions,
    recordings,
    open: (prepare) => openAt('./', prepare),
    openStorage,
    async kept() {
      const reader = await openStorage();
      const kept = await reader.evaluate(readAll);
      await reader.close();
      return kept;
    },
  };
}

/** A session of invented answers. */
export function sessionOf(
  digit: number,
  patient: string,
  recordings: readonly RecordingDocument[],
): SessionDocument {
  return {
    format: 'overfoot-visit',
    version: sessionVersion,
    ...notAsked,
    id: idOf('3', digit),
    startedAt: '2026-04-05T06:07:08.000Z',
    endedAt: '2026-04-05T06:21:08.000Z',
    patient,
    planId: null,
    painBefore: 1,
    painAfter: 2,
    effort: 6,
    remark: '',
    sets: recordings.map(({ id, setup }, index) => ({
      sessionId: id,
      item: 0,
      task: setup.task,
      side: setup.side,
      number: index + 1,
      prescribedRepetitions: 6,
      painDuring: 2,
      cutShort: null,
      heldMs: null,
      conditions: null,
    })),
  };
}

/** Runs in the page. */
async function readAll(): Promise<Record<string, string>> {
  const { repository } = await window.storagePage.openRepository();
  const kept: Record<string, string> = {};
  for (const session of (await repository.sessions.list()).found)
    kept[`session ${session.id}`] = JSON.stringify(session);
  for (const { id } of (await repository.recordings.list()).found) {
    const { recording, facts } = (await repository.recordings.find(id))!;
    const video = facts.video === null ? null : await repository.videos.read(facts.video);
    kept[`recording ${id}`] = JSON.stringify(recording);
    kept[`video ${id}`] = String(video?.size ?? 'none');
  }
  for (const { id, text } of (await repository.plans.list()).found) kept[`plan ${id}`] = text;
  repository.close();
  return kept;
}
