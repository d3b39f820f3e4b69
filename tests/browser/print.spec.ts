import { expect, test, type Page } from '@playwright/test';
import { libraryIds } from '#core/exercises/library/libraryIds';
import { redFlags } from '#core/safety/redFlags';
import { cautionsOf } from '#documents/plan/cautions';
import { doseWords } from '#documents/plan/itemFacts';
import { itemName } from '#documents/plan/itemName';
import { kitList } from '#documents/plan/kitList';
import { perWeekSentence } from '#documents/plan/perWeekSentence';
import { newDraft, newItem, type PlanDraft } from '#documents/plan/planDraft';
import { dateInWords } from '#words/dateWords';
import { cameraPlace, exerciseCautions, exerciseSteps } from '#words/exerciseWords';
import { signWords } from '#words/signWords';
import { readPrint, type Print, type PrintMark } from '../support/browser/readPrint';

const paper = { format: 'A4', margin: { top: '1cm', right: '1cm', bottom: '1cm', left: '1cm' } } as const;
const marginPt = 28.35;
/** The same paper between its margins, pixels of 1/96 inch. */
const paperPx = { width: 718, height: 1047 };
/** Places are rounded to fractions of a point. */
const roundingPt = 0.5;
/** Of each task: from the front and from the side, at its start and its end. */
const drawingsOfTask = 4;
const fillings = ['brief', 'full'] as const;

/** A plan with the first few tasks of the library; 'brief' as they are, 'full' with every field filled in. */
function planOf(tasks: number, filling: (typeof fillings)[number]): PlanDraft {
  const items = libraryIds.slice(0, tasks).map((id) => ({ ...newItem(id), sides: ['left' as const] }));
  if (filling === 'brief') return { ...newDraft(), patient: 'Grey Otter 3', items };
  return {
    ...newDraft(),
    patient: 'Grey Otter 3',
    items: items.map((item) => ({ ...item, sides: ['left', 'right'] })),
    perWeek: 3,
    howOften: 'Every other day, in the morning or in the evening.',
    words: 'Slowly, and never into pain. '.repeat(12),
    reviewDate: '2099-03-20',
  };
}

/** What the patient must find on paper, one sentence each. */
function sentencesOf(draft: PlanDraft): string[] {
  const { stop, beyondPainLimit, defer } = cautionsOf(draft);
  return [
    ...stop,
    ...[beyondPainLimit, defer, draft.howOften, draft.words.trim()],
    draft.reviewDate === null ? '' : dateInWords(draft.reviewDate),
    perWeekSentence(draft) ?? '',
    ...redFlags.map(({ id }) => signWords(id)),
    ...kitList(draft.items, draft.footwear).map(({ sentence }) => sentence),
    ...draft.items.map(({ task }) => cameraPlace(task) ?? ''),
    ...draft.items.flatMap((item) => [
      itemName(item),
      doseWords(item),
      ...exerciseCautions(item.task),
      ...exerciseSteps(item.task, 'left'),
    ]),
  ];
}

/** Plan writing on a device that keeps this draft and nothing else. */
async function openPlan(page: Page, draft: PlanDraft) {
  await page.goto('./licences.txt'); // Where the program does not run.
  await page.evaluate(async (text) => {
    interface Buckets {
      keys(): Promise<string[]>;
      delete(name: string): Promise<void>;
    }
    const { storageBuckets } = navigator as unknown as { storageBuckets: Buckets };
    for (const name of await storageBuckets.keys()) await storageBuckets.delete(name);
    localStorage.setItem('overfoot-role', 'treats');
    localStorage.setItem('overfoot-draft', text);
  }, JSON.stringify(draft));
  await page.goto('./');
  await page.getByRole('button', { name: 'Write a plan' }).click();
  await expect(page.getByRole('article', { name: 'The patient’s sheet' })).toContainText(draft.patient);
}

/** Marks of which one is printed over the other. */
function collisions({ marks }: Print): string[] {
  const lies = (one: PrintMark, other: PrintMark) =>
    one.page === other.page &&
    Math.min(one.right, other.right) - Math.max(one.left, other.left) > roundingPt &&
    Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top) > roundingPt;
  return marks.flatMap((one, i) =>
    marks.slice(i + 1).flatMap((other) => (lies(one, other) ? `${nameOf(one)} / ${nameOf(other)}` : [])),
  );
}

const nameOf = ({ kind, text, page }: PrintMark) => `page ${page + 1}: ${kind === 'text' ? text : 'drawing'}`;
/** Lines break and lists are numbered on paper: words are compared without what is between them. */
const squeezed = (text: string) => text.replaceAll(/\s/g, '');

// Full and brief plans take turns: each number of tasks is printed once, and both are where pages break.
for (const [turn, filling] of fillings.entries()) {
  test(`plans of any number of tasks, ${filling}, are printed in full, and nothing overlaps`, async ({
    page,
  }) => {
    for (const tasks of [...libraryIds.keys()].filter((index) => index % fillings.length === turn)) {
      await test.step(`${tasks + 1} tasks`, () => expectPrinted(page, planOf(tasks + 1, filling)));
    }
  });
}

async function expectPrinted(page: Page, draft: PlanDraft): Promise<void> {
  await openPlan(page, draft);
  const print = readPrint(await page.pdf(paper));

  expect(collisions(print)).toEqual([]);
  expect(new Set(print.marks.map((mark) => mark.page)).size).toBe(print.pages.length);
  const [{ widthPt, heightPt }] = print.pages as [Print['pages'][number]];
  const isCutOff = ({ left, right, top, bottom }: PrintMark) =>
    left < marginPt - roundingPt ||
    right > widthPt - marginPt + roundingPt ||
    top < marginPt - roundingPt ||
    bottom > heightPt - marginPt + roundingPt;
  expect(print.marks.filter(isCutOff).map(nameOf)).toEqual([]);
  const drawings = print.marks.filter(({ kind }) => kind === 'drawing');
  expect(drawings).toHaveLength(drawingsOfTask * draft.items.length);
  const printed = squeezed(print.marks.map(({ text }) => text).join(''));
  // When to stop is read before anything is done.
  const stops = [...cautionsOf(draft).stop, ...redFlags.map(({ id }) => signWords(id))];
  const firstTask = printed.indexOf(squeezed(doseWords(draft.items[0]!)));
  for (const stop of stops) expect(printed.indexOf(squeezed(stop))).toBeLessThan(firstTask);
  expect(sentencesOf(draft).filter((sentence) => !printed.includes(squeezed(sentence)))).toEqual([]);
}

test('the sheet fits the width of the paper, with its parts below each other', async ({ page }) => {
  await page.setViewportSize(paperPx);
  await openPlan(page, planOf(libraryIds.length, 'full'));
  await page.emulateMedia({ media: 'print' });
  const sheet = page.getByRole('article', { name: 'The patient’s sheet' });
  const boxes = await sheet.evaluate((article) =>
    [...article.querySelectorAll(':scope > *, .plan-items > li, svg, p, li, dt, dd')].map((element) => {
      const { left, right, top, bottom } = element.getBoundingClientRect();
      const isPart = element.parentElement === article || element.parentElement?.className === 'plan-items';
      return { left, right, top, bottom, isPart, isList: element.className === 'plan-items' };
    }),
  );
  for (const { left, right, top, bottom } of boxes) {
    expect(left).toBeGreaterThanOrEqual(0);
    expect(right).toBeLessThanOrEqual(paperPx.width);
    expect(bottom - top).toBeGreaterThan(0);
  }
  const parts = boxes.filter(({ isPart, isList }) => isPart && !isList);
  expect(parts.length).toBeGreaterThan(libraryIds.length);
  for (const [i, part] of parts.slice(1).entries()) expect(part.top).toBeGreaterThanOrEqual(parts[i]!.bottom);
});
