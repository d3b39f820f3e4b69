import { expect, test } from '@playwright/test';
import { accessibilityFaults } from '../support/browser/accessibilityFaults';
import { openPlanWriting } from '../support/browser/openPlanWriting';

test('the stages of a task are renamed, moved, removed and added for the practice, and kept', async ({
  page,
}) => {
  await openPlanWriting(page);
  await page.getByRole('button', { name: 'Add a task' }).click();
  await page.getByRole('option', { name: /Lateral step-down/ }).click();
  const task = page.getByRole('region', { name: /Task 1: Lateral step-down/ });
  await task.getByRole('button', { name: 'Edit the stages …' }).click();
  const dialog = page.getByRole('dialog', { name: /^Stages/ });
  const words = dialog.getByRole('textbox', { name: 'Words of the stage' });
  const library = await words.count();
  const second = await words.nth(1).inputValue();
  await words.first().fill('From a low step, a hand on the rail.');
  await words.first().press('Tab');
  await expect(
    dialog.getByRole('button', { name: 'Move down: From a low step, a hand on the rail.' }),
  ).toBeFocused();
  await dialog.getByRole('button', { name: `Move up: ${second}` }).click();
  await expect(words.first()).toHaveValue(second);
  await expect(words.nth(1)).toHaveValue('From a low step, a hand on the rail.');
  await dialog.getByRole('button', { name: `Remove: ${second}` }).click();
  await expect(words).toHaveCount(library - 1);
  await dialog.getByLabel('Add a stage, in a sentence').fill('With a rucksack.');
  await dialog.getByRole('button', { name: 'Add it' }).click();
  await expect(words.last()).toHaveValue('With a rucksack.');
  expect(await accessibilityFaults(page)).toEqual([]);

  await dialog.getByRole('button', { name: 'Undo' }).click();
  await expect(words.last()).not.toHaveValue('With a rucksack.');
  await dialog.getByLabel('Add a stage, in a sentence').fill('With a rucksack.');
  await dialog.getByRole('button', { name: 'Add it' }).click();
  await dialog.getByRole('button', { name: 'Close' }).click();

  // Kept on the device, and offered where a stage is chosen.
  await page.reload();
  await task.getByRole('button', { name: /Stage/ }).first().click();
  await page.getByRole('option', { name: `${library} of ${library}: With a rucksack.` }).click();
  await expect(task).toContainText('With a rucksack.');

  await task.getByRole('button', { name: 'Edit the stages …' }).click();
  await dialog.getByRole('button', { name: 'Back to the program’s own' }).click();
  await expect(words.first()).not.toHaveValue(/low step/);
  await expect(words.nth(1)).toHaveValue(second);
  await expect(dialog.getByRole('button', { name: 'Back to the program’s own' })).toBeDisabled();
});
