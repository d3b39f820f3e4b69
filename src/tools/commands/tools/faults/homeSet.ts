import type { Page } from '@playwright/test';
import type { GuidePhase } from '#features/home/guide/guideState';
import { smallItem, smallPlan } from '../../../../../tests/support/smallPlan';
import { answerScales, goHome, goToCamera, goToSet } from '../homePages';
import type { FaultDevice, Kept } from './faultDevice';

const item = smallItem({ sets: 1, repetitions: 2, feedback: 'every-repetition' });
const plan = smallPlan({ items: [item] });
/** The longest phase before a set is the wait for the start position; other programs may take the processor, ms. */
const longestPhaseMs = 120_000;

const press = (page: Page, name: string) => page.getByRole('button', { name }).click();
/** Goes from the first screen to the one that asks for the camera. */
export async function toCamera(device: FaultDevice, prepare?: () => void): Promise<Page> {
  const page = await device.open(prepare);
  await goToCamera(page, plan);
  return page;
}

/** Begins a set at home before a staged camera. */
export async function beginSet(device: FaultDevice, prepare?: () => void): Promise<Page> {
  const page = await toCamera(device, prepare);
  await goToSet(page);
  return page;
}

export async function inPhase(page: Page, phase: GuidePhase): Promise<void> {
  await page.locator(`.film[data-phase="${phase}"]`).waitFor({ timeout: longestPhaseMs });
}

/** Waits until so many repetitions of the set are counted. */
export async function counted(page: Page, count: number): Promise<void> {
  await page.getByRole('img', { name: `${count} of 2 repetitions` }).waitFor({ timeout: longestPhaseMs });
}

/** Waits for the end of the set, answers what is asked after it, and saves the session. */
export async function finishSession(page: Page): Promise<void> {
  await inPhase(page, 'all-done');
  await press(page, 'Say how it was');
  await answerAndSave(page);
}

export async function answerAndSave(page: Page): Promise<void> {
  await answerScales(page);
  await page.getByRole('textbox').fill('It went well.');
  await press(page, 'Save');
  await page.getByRole('heading', { name: /This is how it went/ }).waitFor();
}

/** Keeps the set that was interrupted, as somebody does who opens the page again. */
export async function keepInterrupted(device: FaultDevice): Promise<void> {
  const page = await device.open();
  await goHome(page);
  const offer = page.getByText('A set was interrupted');
  await offer.waitFor();
  await press(page, 'Keep it');
  await offer.waitFor({ state: 'detached', timeout: longestPhaseMs });
  await page.close();
}

export interface NewSet {
  /** From the first to the last of its joints, and the longest time between two, ms. */
  lengthMs: number;
  longestGapMs: number;
  /** Complete ones. */
  repetitions: number;
  hasVideo: boolean;
}

/** The recordings that are new among what is kept. */
export function newSets(after: Kept, before: Kept): NewSet[] {
  return Object.keys(after)
    .filter((key) => key.startsWith('recording ') && before[key] === undefined)
    .map((key) => {
      const { observed, derived } = JSON.parse(after[key]!) as RecordingParts;
      const { timesMs } = observed;
      return {
        longestGapMs: Math.max(0, ...timesMs.map((timeMs, at) => timeMs - (timesMs[at - 1] ?? timeMs))),
        lengthMs: timesMs.length === 0 ? 0 : timesMs.at(-1)! - timesMs[0]!,
        repetitions: derived.repetitions.filter(({ completeness }) => completeness === 'complete').length,
        hasVideo: after[key.replace('recording', 'video')] !== 'none',
      };
    });
}

interface RecordingParts {
  observed: { timesMs: number[] };
  derived: { repetitions: { completeness: string }[] };
}
