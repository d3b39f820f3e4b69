import type { Page } from '@playwright/test';
import { CommandProblem } from '../commandProblem';

/** One day of a patient, from the first page to the first repetition. */
export interface DayFigures {
  taps: number;
  /** To be read before the first movement: on every page until the last tap, each line once. */
  words: number;
  /** From the page's opening, with no time for reading. */
  secondsToFirstRepetition: number;
}

/** The patient's way through the first page, where it has several. */
const firstDoors = /^(Record yourself|I exercise|Today)/;
const mostTaps = 25;
const patienceMs = 240_000;

/**
 * Opens a page and does what it asks: answers every scale with 1, presses the button that it puts first, and waits while
 * a set is under way.
 */
export async function walkToFirstRepetition(page: Page, address: string): Promise<DayFigures> {
  const fromMs = performance.now();
  await page.goto(address);
  const reading = createReading();
  let taps = 0;
  for (;;) {
    if (await isCounted(page)) break;
    if (performance.now() - fromMs > patienceMs || taps > mostTaps)
      throw new CommandProblem(`No repetition was counted. The page says: ${await page.innerText('body')}`);
    let shown = '';
    const read = async () => void (shown = await page.innerText('body'));
    if (!(await tap(page, read))) {
      await page.waitForTimeout(100);
      continue;
    }
    taps++;
    reading.add(shown);
  }
  return { taps, words: reading.words(), secondsToFirstRepetition: (performance.now() - fromMs) / 1000 };
}

/** From the first repetition to the last page, and no farther: the next session would be cut off. */
export async function walkToEnd(page: Page): Promise<void> {
  const film = page.locator('main.film');
  await film.and(page.locator('[data-phase="all-done"]')).waitFor({ timeout: patienceMs });
  await page.waitForTimeout(3000);
  const today = page.getByRole('heading', { level: 1, name: 'Today' });
  for (let taps = 0; taps < mostTaps && !(await today.isVisible()); taps++) {
    if (!(await tap(page))) await page.waitForTimeout(500);
  }
}

/**
 * Presses what comes next; whether there was anything to press.
 *
 * @param before  called once there is, so that its page is there as well
 */
async function tap(page: Page, before: () => Promise<void> = () => Promise.resolve()): Promise<boolean> {
  const phase = await page.evaluate(
    () => document.querySelector<HTMLElement>('main.film')?.dataset['phase'] ?? null,
  );
  if (phase !== null && !['placing', 'all-done'].includes(phase)) return false;
  // The numbers of the day after say that nothing is new, too.
  const scale = page.locator('.scale:not(:has(:checked, [aria-checked="true"])), .nothing-new-numbers');
  if ((await scale.count()) > 0) {
    await before();
    // The label lies over the button that it belongs to.
    await scale.first().getByRole('radio', { name: /^1\b/ }).click({ force: true });
    return true;
  }
  const door = page.getByRole('button', { name: firstDoors });
  const first = page.locator('.button-primary:not([disabled]):not([data-disabled])');
  const isDoor = phase === null && (await door.count()) > 0;
  const button = isDoor ? door.first() : first.filter({ visible: true }).last();
  // In a set, its own buttons are pressed by nobody: only a question is answered.
  const isAsked = phase !== 'placing' || (await page.locator('.film-panel').count()) > 0;
  if (!isAsked || (await button.count()) === 0) return false;
  await before();
  return button.click({ timeout: 2000 }).then(
    () => true,
    () => false,
  );
}

async function isCounted(page: Page): Promise<boolean> {
  return (await page.getByRole('img', { name: /^[1-9]\d* of \d+ repetitions$/ }).count()) > 0;
}

/** Counts the words of one page after another, without lines that the page before had, too. */
export function createReading(): { add(shown: string): void; words(): number } {
  let words = 0;
  let linesBefore: ReadonlySet<string> = new Set();
  return {
    add(shown) {
      const lines = shown.split('\n').map((line) => line.trim());
      words += lines.filter((line) => !linesBefore.has(line)).reduce((sum, line) => sum + wordsIn(line), 0);
      linesBefore = new Set(lines);
    },
    words: () => words,
  };
}

function wordsIn(line: string): number {
  return line.split(/\s+/).filter((word) => /[\p{L}\d]/u.test(word)).length;
}
