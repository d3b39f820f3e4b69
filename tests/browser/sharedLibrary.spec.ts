import { expect, test } from '@playwright/test';
import { accessibilityFaults } from '../support/browser/accessibilityFaults';
import { openTwoMembers } from '../support/browser/openTwoMembers';

test.setTimeout(60_000);

test('what one keeps in the library appears where a colleague has it open, and what is taken out goes', async ({
  browser,
  baseURL,
}) => {
  const { server, ab, kn, close } = await openTwoMembers(browser, baseURL!);
  for (const { page, start } of [ab, kn]) {
    await start(server.address);
    await page.getByRole('button', { name: 'Close' }).click();
    await page.getByRole('button', { name: 'Write a plan' }).first().click();
  }
  const library = kn.page.getByRole('dialog', { name: 'The practice’s library' });
  await kn.page.getByRole('button', { name: 'Library …' }).click();
  await expect(library).toContainText('all its devices have the same one');

  await ab.page.getByRole('button', { name: 'Add a task' }).click();
  await ab.page.getByRole('option', { name: /Lateral step-down/ }).click();
  await ab.page.getByRole('button', { name: 'Edit the stages …' }).click();
  const words = ab.page.getByRole('textbox', { name: 'Words of the stage' }).first();
  await words.fill('From a low step, a hand on the rail.');
  await words.press('Tab');
  const own = library.getByRole('listitem').filter({ hasText: 'Lateral step-down' });
  await expect(own).toContainText(/\d stages/);
  expect(await accessibilityFaults(kn.page)).toEqual([]);

  await own.getByRole('button', { name: /Take the stages/ }).click();
  await expect(own).toHaveCount(0);
  await expect(words).not.toHaveValue('From a low step, a hand on the rail.');
  await library.getByRole('button', { name: 'Undo the last change of the library' }).click();
  await expect(own).toHaveCount(1);
  await expect(words).toHaveValue('From a low step, a hand on the rail.');
  await close();
});
