import { readFileSync } from 'node:fs';
import { chromium, type Locator, type Page } from '@playwright/test';
import { median, range } from 'd3-array';
import type {} from '../../headless/storage';
import { mapSavedCurves } from '#core/measures/measures';
import type { PlanDocument } from '#documents/plan/planDocument';
import { finishDraft, newDraft, newItem } from '#documents/plan/planDraft';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { notAsked } from '#documents/session/notAsked';
import { sessionVersion, type SessionDocument } from '#documents/session/sessionDocument';
import { unplannedSet } from '#documents/session/unplannedSet';
import { packParcel } from '#features/sharing/store/parcel';
import { newKeyPair, sealFor } from '#shell/seal';
import { seededPseudonym } from '../../headless/seededPseudonym';
import { clickThrough, type ClinicWays, type SentFile } from './clinicClicks';
import { ensureBuilt } from './ensureBuilt';
import { browserSwitches, findBrowser } from './findBrowser';
import { serveBuild } from './serveBuild';

/** How fast a large clinic opens; medians of rounds, each on a page that was just loaded, with nothing in its memory. */
export interface ClinicFigures {
  patients: number;
  sessions: number;
  /** From loading the page to the first lines of the list, with which it opens. */
  startMs: number;
  /** From asking for the list to its first lines on the screen. */
  listMs: number;
  /** From choosing a patient to the sets of the course on the screen. */
  courseMs: number;
  /** From the last key of a search to what was found on the screen. */
  searchMs: number;
  /** From choosing a set of the course to its repetitions on the screen; one of the length of the example. */
  openSetMs: number;
  /** Working everything out for the first time, once. */
  firstTimeMs: number;
  /** Putting everything into storage, once; the way there is the benchmark's own. */
  fillingMs: number;
  /** Each from the first page, clicked through once. */
  ways: ClinicWays;
}

const clinic = { patients: 500, sessions: 20, sets: 1, firstSets: 4 };
const rounds = 5;
/** With the one who sends a file. */
const everybody = clinic.patients + 1;
/** The patient whose course has the most sets. */
const fullest = seededPseudonym(0);
const almostFullest = fullest.slice(0, -1);
/** How many the search for that finds: all who have each of its words somewhere. */
const likeFullest = range(clinic.patients).filter((at) =>
  almostFullest.split(' ').every((word) => seededPseudonym(at).includes(word)),
).length;
const longMs = 600_000;

/** @param recordingPath  a recording document whose repetitions are repeated */
export async function benchClinic(recordingPath: string): Promise<ClinicFigures> {
  const example = parseRecording(readFileSync(recordingPath, 'utf8'));
  const recording = withoutFrames(example);
  ensureBuilt();
  const server = await serveBuild();
  const browser = await chromium.launch({ executablePath: findBrowser(), args: [...browserSwitches] });
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    page.setDefaultTimeout(longMs);
    await page.goto(new URL('tools/headless/storage.html', server.url).href);
    await page.waitForFunction(() => 'storagePage' in window);
    const fromMs = Date.now();
    await page.evaluate((asked) => window.storagePage.seedClinic(asked), { ...clinic, recording });
    const fillingMs = Date.now() - fromMs;
    const sent = await keepForWays(page, example);
    await page.goto(server.url);
    await page.getByRole('button', { name: 'I treat people' }).click();
    const firstTimeMs = await timeFirstTime(page);
    const [startMs, listMs, searchMs, courseMs, openSetMs]: number[][] = [[], [], [], [], []];
    for (let round = 0; round < rounds; round++) {
      startMs!.push(await timeStart(page));
      await page.getByRole('button', { name: 'Back to the start' }).click();
      listMs!.push(await timePress(page, 'Patients', '.patients-line'));
      await page.getByRole('searchbox').fill(almostFullest);
      await page.getByText(`${likeFullest} of ${everybody} patients`).waitFor();
      searchMs!.push(await timeSearch(page, fullest));
      courseMs!.push(await timePress(page, fullest, '.course-set'));
      await page.getByRole('button', { name: 'All patients' }).click();
      await page.getByRole('searchbox').fill(sent.patient);
      await page.locator('.patients-line', { hasText: sent.patient }).click();
      openSetMs!.push(await timePress(page, page.locator('.course-set').first(), '.table-row'));
      await page.getByRole('button', { name: 'Back to the patient' }).click();
      await page.getByRole('button', { name: 'All patients' }).click();
    }
    const ways = await clickThrough(page, sent);
    return {
      patients: clinic.patients,
      sessions: clinic.patients * clinic.sessions,
      startMs: median(startMs!)!,
      listMs: median(listMs!)!,
      courseMs: median(courseMs!)!,
      searchMs: median(searchMs!)!,
      openSetMs: median(openSetMs!)!,
      firstTimeMs,
      fillingMs,
      ways,
    };
  } finally {
    await browser.close();
    await server.close();
  }
}

/** As short as a document may be: lists do not read what is left out. */
function withoutFrames({ observed, derived, ...rest }: RecordingDocument): RecordingDocument {
  const frames = 3;
  const cut = (values: readonly number[], each: number) => values.slice(0, frames * each);
  const points = observed.points.length;
  const curve = { values: [1, 2, 3], missing: [] };
  const repetitions = JSON.parse(JSON.stringify(derived.repetitions), (key, value: unknown) =>
    key === 'sample' ? 1 : value,
  ) as typeof derived.repetitions;
  return {
    ...rest,
    observed: {
      ...observed,
      timesMs: cut(observed.timesMs, 1),
      xPx: cut(observed.xPx, points),
      yPx: cut(observed.yPx, points),
      score: cut(observed.score, points),
    },
    derived: {
      ...derived,
      curves: mapSavedCurves(() => curve),
      repetitions: repetitions.map((one) => ({ ...one, loadedFrom: 0, loadedTo: 2 })),
    },
  };
}

/** From the list with nothing worked out to everything worked out, ms. */
async function timeFirstTime(page: Page): Promise<number> {
  const fromMs = Date.now();
  await page.getByRole('button', { name: 'Patients', exact: true }).click();
  await page.getByText(`${everybody} patients, ${everybody} with new sessions`).waitFor();
  await page.waitForFunction(
    () => !document.querySelector('.patients-counted')!.textContent.includes('reading'),
  );
  return Date.now() - fromMs;
}

/**
 * Keeps a plan, an earlier session of its patient with the example, and the clinic's key; seals a session that the
 * patient sends.
 */
async function keepForWays(page: Page, example: RecordingDocument): Promise<SentFile> {
  const plan = smallestPlan();
  const key = await newKeyPair();
  const visitOf = (recording: RecordingDocument): SessionDocument => ({
    format: 'overfoot-visit',
    version: sessionVersion,
    ...notAsked,
    id: crypto.randomUUID(),
    startedAt: recording.createdAt,
    endedAt: null,
    patient: plan.patient,
    planId: plan.id,
    painBefore: 1,
    painAfter: 2,
    effort: 5,
    remark: '',
    sets: [{ ...unplannedSet({ id: recording.id, ...recording.setup }, 1) }],
  });
  const kept = { ...example, id: crypto.randomUUID(), createdAt: '2026-02-02T08:00:00.000Z' };
  await page.evaluate(
    async ({ planId, planText, keys, session, recording }) => {
      const { repository } = await window.storagePage.openRepository();
      await repository.plans.save(planId, planText);
      await repository.notes.write('keys', keys);
      const visitId = session.id;
      await repository.keepTogether(session, [{ recording, visitId, fromVideo: 'impossible', video: null }]);
      repository.close();
    },
    {
      planId: plan.id,
      planText: JSON.stringify(plan),
      keys: JSON.stringify([key]),
      session: visitOf(kept),
      recording: kept,
    },
  );
  const done = { ...example, id: crypto.randomUUID(), createdAt: '2026-02-04T08:00:00.000Z' };
  const parcel = { session: visitOf(done), sets: [{ recording: done, video: null }], sentAt: done.createdAt };
  const sealed = await sealFor([key.recipient], await packParcel(parcel, null));
  return { name: 'sent.age', bytes: new Uint8Array(await sealed.arrayBuffer()), patient: plan.patient };
}

/** The plan of one exercise that the sent session follows. */
function smallestPlan(): PlanDocument {
  const item = { ...newItem('split-stance-sit-to-stand'), sides: ['right' as const] };
  const draft = { ...newDraft(), patient: 'Invented Plover 9', items: [item] };
  const finished = finishDraft(draft, crypto.randomUUID(), '2026-01-30T08:00:00.000Z');
  if (finished.kind !== 'plan') throw new Error(finished.sentence);
  return finished.plan;
}

/** From loading the page to the frame in which the list stands on the screen, ms. */
async function timeStart(page: Page): Promise<number> {
  const { origin } = new URL(page.url());
  await page.goto('about:blank'); // Otherwise the page would show where it was.
  await page.goto(origin, { waitUntil: 'commit' });
  await watch(page, null, '.patients-line', 1);
  return shownMs(page);
}

/** From the press of a button to the frame in which something stands on the screen, ms. */
async function timePress(page: Page, pressed: string | Locator, appears: string): Promise<number> {
  const button =
    typeof pressed === 'string'
      ? page.getByRole('button', { name: pressed, exact: pressed === 'Patients' })
      : pressed;
  await button.waitFor();
  await watch(page, 'pointerdown', appears, 1);
  await button.click();
  return shownMs(page);
}

/** From the key to the frame in which only what is searched for is left, ms. */
async function timeSearch(page: Page, search: string): Promise<number> {
  await watch(page, 'keydown', '.patients-line', 1, 1);
  await page.getByRole('searchbox').press(search.slice(-1));
  return shownMs(page);
}

/** @param event  from which time runs; null for the loading of the page */
async function watch(
  page: Page,
  event: 'pointerdown' | 'keydown' | null,
  css: string,
  least: number,
  most = Infinity,
): Promise<void> {
  await page.evaluate(
    ([type, selector, from, to]) => {
      const state = window as unknown as { shownMs?: number };
      delete state.shownMs;
      window.addEventListener(
        type ?? 'watch',
        ({ timeStamp }) => {
          // No function here has a name: the runner would call a helper of its own that the page does not know.
          const timer = setInterval(() => {
            const count = document.querySelectorAll(selector).length;
            if (count < from || count > (to ?? Infinity)) return;
            clearInterval(timer);
            requestAnimationFrame(() => {
              const { port1, port2 } = new MessageChannel();
              port1.onmessage = () => (state.shownMs = performance.now() - (type === null ? 0 : timeStamp));
              port2.postMessage(null);
            });
          }, 4);
        },
        { once: true, capture: true },
      );
      if (type === null) window.dispatchEvent(new Event('watch'));
    },
    [event, css, least, most === Infinity ? null : most] as const,
  );
}

async function shownMs(page: Page): Promise<number> {
  await page.waitForFunction(() => 'shownMs' in window);
  return page.evaluate(() => (window as unknown as { shownMs: number }).shownMs);
}
