import { expect, test } from '@playwright/test';
import { measure } from '#core/measurement/measure';
import { buildRecording } from '#documents/recording/buildRecording';
import { accessibilityFaults } from '../support/browser/accessibilityFaults';
import { openAnew } from '../support/browser/openAnew';
import { demoSessions, saveSessions } from '../support/browser/saveSessions';
import { smallRecordingParts } from '../support/smallRecording';
import { filmPerson } from '../support/syntheticPerson';

const setup = { task: 'single-leg-sit-to-stand', side: 'right' } as const;

test('the count of a one-leg rise is taken from a recorded set, corrected by eye, and kept', async ({
  page,
}) => {
  const { track } = filmPerson({
    ...setup,
    repetitions: Array.from({ length: 9 }, () => ({ peakDeg: 8, movingMs: 2400 })),
    rateHz: 15,
  });
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
  await card.getByLabel('Your initials').fill('ab');
  await card.getByRole('button', { name: 'Keep the test' }).click();
  await expect(card).toContainText('One-leg rise, to the end: left 12 repetitions; right 8 repetitions.');
  await expect(card).toContainText(/Right: 9 repetitions by the camera, set 1 of .*2026\./);
});
