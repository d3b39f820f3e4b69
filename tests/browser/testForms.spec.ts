import { expect, test, type Page } from '@playwright/test';
import type { TaskId } from '#core/exercises/exercises';
import { measure } from '#core/measurement/measure';
import { buildRecording } from '#documents/recording/buildRecording';
import { accessibilityFaults } from '../support/browser/accessibilityFaults';
import { openAnew } from '../support/browser/openAnew';
import { demoSessions, saveSessions } from '../support/browser/saveSessions';
import { smallRecordingParts } from '../support/smallRecording';
import { filmPerson } from '../support/syntheticPerson';

/** Five of the right leg, inward in three. */
const bends: Film = {
  task: 'single-leg-squat',
  repetitions: [15, -12, 14, 16, -10].map((peakDeg) => ({ peakDeg })),
};
const rises: Film = {
  task: 'single-leg-sit-to-stand',
  repetitions: Array.from({ length: 9 }, () => ({ peakDeg: 8, movingMs: 2400 })),
};
interface Film {
  task: TaskId;
  repetitions: { peakDeg: number; movingMs?: number }[];
}

/** The tests' card of a patient with a recorded set of the right leg, and in it the form. */
async function openTests(page: Page, { task, repetitions }: Film = bends) {
  const setup = { task, side: 'right' } as const;
  const { track } = filmPerson({ ...setup, repetitions, rateHz: 15 });
  const [kept] = demoSessions();
  const { id } = kept!.recording;
  const recording = {
    ...buildRecording({ ...smallRecordingParts(), setup, track, measurement: measure(track, setup) }),
    id,
  };
  const session = kept!.session!;
  const sets = session.sets.slice(0, 1).map((set) => ({ ...set, ...setup, sessionId: id }));
  await saveSessions(page, [
    { recording, hasVideo: false, fromVideo: 'impossible', session: { ...session, sets } },
  ]);
  await openAnew(page);
  await page
    .getByRole('list', { name: 'Patients' })
    .getByRole('button', { name: new RegExp(session.patient, 'i') })
    .click();
  const card = page.getByRole('region', { name: 'Tests of function' });
  await card.getByRole('heading', { name: 'Tests of function' }).click();
  await card.getByRole('button', { name: 'Write down a test' }).click();
  return card;
}

const sign = async (card: ReturnType<Page['getByRole']>) => {
  await card.getByLabel('Your initials').fill('ab');
  await card.getByRole('button', { name: 'Keep the test' }).click();
};

test('the count of a one-leg rise is taken from a recorded set, corrected by eye, and kept', async ({
  page,
}) => {
  const card = await openTests(page, rises);
  await card.getByLabel('Test', { exact: true }).selectOption('One-leg rise, to the end');
  await expect(card).toContainText('No recorded set (single-leg sit-to-stand, left leg) is kept');
  await card.getByLabel('Or take it from a recorded set').selectOption({ index: 1 });
  await expect(card.getByRole('status')).toContainText(/^9 repetitions, from \d/);
  await expect(card.getByRole('status')).toContainText('whether the other foot touched the floor');
  const field = card.getByLabel('Right leg, each try, repetitions');
  await expect(field).toHaveValue('9');
  expect(await accessibilityFaults(page)).toEqual([]);

  // Seen by eye: the other foot was put down in the last one.
  await field.fill('8');
  await card.getByLabel('Left leg, each try, repetitions').fill('12');
  await sign(card);
  await expect(card).toContainText('One-leg rise, to the end: left 12 repetitions; right 8 repetitions.');
  await expect(card).toContainText(/Right: 9 repetitions by the camera, set 1 of .*2026\./);
});

test('the inward bends of a mini squat are counted in a recorded set', async ({ page }) => {
  const card = await openTests(page);
  await card.getByLabel('Test', { exact: true }).selectOption('Mini squat, knee over or inward of the foot');
  await expect(card).toContainText('No recorded set (single-leg squat, left leg) is kept');
  await card.getByLabel('Or take it from a recorded set').selectOption({ index: 1 });
  await expect(card.getByRole('status')).toContainText('Inward of the foot in 3 of 5 bends: at ');
  const field = card.getByLabel('Right leg, each try, repetitions');
  await expect(field).toHaveValue('3');
  // Beside the longest label.
  expect((await field.boundingBox())!.width).toBeGreaterThan(0.45 * (await card.boundingBox())!.width);
  expect(await accessibilityFaults(page)).toEqual([]);
  await card.getByLabel('Left leg, each try, repetitions').fill('1');
  await sign(card);
  await expect(card).toContainText(
    'left inward in 1 of 5 bends, knee over the foot; right inward in 3 of 5 bends, knee inward of the foot.',
  );
});

test('a step-down is rated by what was seen, each leg by itself', async ({ page }) => {
  const card = await openTests(page);
  await card.getByLabel('Test', { exact: true }).selectOption('Step-down, quality by eye');
  const left = card.getByRole('group', { name: /left leg/ });
  await left.getByRole('button', { name: 'Nothing of this was seen' }).click();
  await expect(left.getByRole('status')).toHaveText('Step-down by eye: 0 of 6 points, good.');
  const right = card.getByRole('group', { name: /right leg/ });
  await right.getByLabel('The trunk leans to a side').check();
  await right.getByLabel(/^The bump below the kneecap/).selectOption('beyond-inner-border');
  await expect(right.getByRole('status')).toHaveText('Step-down by eye: 3 of 6 points, medium.');
  await expect(card.getByLabel('Right leg, each try, points')).toHaveValue('3');
  expect(await accessibilityFaults(page)).toEqual([]);
  await sign(card);
  await expect(card).toContainText('left 0 points of 6, good; right 3 points of 6, medium.');
  await expect(card).toContainText(
    'Left, seen: nothing of the list. Right, seen: the trunk leaned, knee beyond the inner border of the foot.',
  );
});

test('a balance reach takes three directions and the length of the leg', async ({ page }) => {
  const card = await openTests(page);
  await card.getByLabel('Test', { exact: true }).selectOption('Balance reach, three directions');
  await card.getByLabel('Left leg, to the front, each try, cm').fill('58 60 59');
  await card.getByLabel('Left leg, backwards, across, each try, cm').fill('80');
  await card.getByLabel('Left leg, backwards, outward, each try, cm').fill('88 far');
  await card.getByLabel('Left leg, length of the leg, each try, cm').fill('80 80');
  await sign(card);
  await expect(card.getByRole('alert')).toContainText('Write each try in cm as a number');
  await card.getByLabel('Left leg, backwards, outward, each try, cm').fill('88');
  await expect(card.getByRole('status')).toContainText(
    'front 75, backwards across 100, backwards outward 110; mean 95',
  );
  await card.getByLabel('Right leg, to the front, each try, cm').fill('55');
  expect(await accessibilityFaults(page)).toEqual([]);
  await card.getByRole('button', { name: 'Keep the test' }).click();
  const rows = card.getByRole('row');
  await expect(rows).toHaveText([
    'Standing leg' + 'Left' + 'Right',
    'Length of the leg' + '80 cm' + 'not done',
    'To the front' + '60 cm (75 %)' + '55 cm',
    'Backwards, across' + '80 cm (100 %)' + 'not done',
    'Backwards, outward' + '88 cm (110 %)' + 'not done',
    'Mean of the three' + '95 %' + 'not told',
  ]);
  await page.setViewportSize({ width: 390, height: 844 });
  const box = await card.boundingBox();
  expect(box!.width).toBeLessThan(390);
  await expect(card).toContainText('No norms known.');
});
