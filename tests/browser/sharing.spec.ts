import { expect, test } from '@playwright/test';
import type { PracticeMember } from '#tools/commands/tools/practice/practiceMember';
import { accessibilityFaults } from '../support/browser/accessibilityFaults';
import { openTwoMembers } from '../support/browser/openTwoMembers';
import { inventedPatient, inventedSession } from '../support/practice/invented';

const heron = inventedPatient('Blue Heron 7');
const status = ({ page }: PracticeMember) => page.getByRole('status').filter({ hasText: /\.|…/ });

test.setTimeout(60_000);

test('two colleagues share patients and sessions through a server, offline meanwhile, and both edits stay', async ({
  browser,
  baseURL,
}) => {
  const { server, ab, kn, close } = await openTwoMembers(browser, baseURL!);
  const sessions = Array.from({ length: 20 }, () => inventedSession('Blue Heron 7'));
  await ab.keep([heron], sessions);
  await ab.start(server.address);
  await kn.start(server.address);
  const arrived = async (member: PracticeMember) => (await member.kept()).sessionIds.length;
  await expect.poll(() => arrived(kn)).toBe(20);
  await expect(status(kn)).toContainText('Up to date.');
  expect(await accessibilityFaults(kn.page)).toEqual([]);

  // Without a network both keep working.
  server.cutAfter(0);
  await expect(status(ab)).toContainText('The server does not answer.');
  await ab.note(heron.id, { goals: 'Stairs', changedAt: '2026-03-01T04:05:06.000Z' });
  await kn.note(heron.id, { goals: 'Running', changedAt: '2026-03-02T04:05:06.000Z' });
  server.mend();
  for (const { page } of [ab, kn]) await page.getByRole('button', { name: 'Exchange now' }).click();
  for (const member of [ab, kn])
    await expect
      .poll(async () => (await member.kept()).patients.map(({ goals, alsoNoted }) => [goals, alsoNoted]))
      .toEqual([['Running', [{ at: '2026-03-01T04:05:06.000Z', by: 'AB', notes: { goals: 'Stairs' } }]]]);

  await kn.page.getByRole('button', { name: 'Stop sharing' }).click();
  await expect(kn.page.getByRole('button', { name: 'Start sharing' })).toBeVisible();
  // What is on is on again when the page is next opened.
  await ab.page.reload();
  await ab.keep([], [inventedSession('Blue Heron 7')]);
  await expect
    .poll(async () => ((await (await fetch(server.address)).json()) as { doc_count: number }).doc_count)
    .toBe(22);
  expect(await arrived(kn)).toBe(20);
  await close();
});

test('a patient whose pseudonym is used for somebody else is named, and becomes one with the one here', async ({
  browser,
  baseURL,
}) => {
  const { server, ab, kn, close } = await openTwoMembers(browser, baseURL!);
  const sessions = [inventedSession('Blue Heron 7')];
  await ab.keep([heron], sessions);
  await kn.keep([inventedPatient('Blue Heron 7')], []);
  await ab.start(server.address);
  await kn.start(server.address);
  const twice = kn.page.getByRole('list', { name: 'Pseudonyms that are used twice' });
  await expect(twice).toContainText('Blue Heron 7 from AB. Here that is Blue Heron 7 on this device');
  await kn.page.getByRole('button', { name: 'It is the same person …' }).click();
  await expect(twice).toContainText('It can’t be undone.');
  expect(await accessibilityFaults(kn.page)).toEqual([]);
  await kn.page.getByRole('button', { name: 'Leave it' }).click();
  await expect(twice).toBeVisible();
  await kn.page.getByRole('button', { name: 'It is the same person …' }).click();
  await kn.page.getByRole('button', { name: 'They are one person' }).click();
  await expect(twice).toBeHidden();
  await expect.poll(async () => (await kn.kept()).sessionIds).toEqual([sessions[0]!.id]);
  for (const member of [ab, kn])
    await expect
      .poll(async () => (await member.kept()).patients.map(({ log }) => log.map(({ what }) => what)))
      .toEqual([['taken']]);
  await close();
});

test('a build that names no server says so, and offers its own host folded away', async ({
  page,
  baseURL,
}) => {
  await page.goto('./');
  const heading = page.getByRole('heading', { level: 1, name: 'Patients' });
  const open = page.getByRole('button', { name: 'Patients', exact: true });
  await heading.or(open).first().waitFor();
  if (await open.isVisible()) await open.click();
  await page.getByRole('button', { name: 'Practice', exact: true }).click();
  const part = page.getByRole('region', { name: 'Sharing within the practice' });
  await expect(part).toContainText('This build of the program names no server.');
  const address = page.getByLabel('Address of the practice’s database');
  await expect(address).toBeHidden();
  await part.getByText('The server of this page has the practice’s database as well').click();
  await expect(address).toHaveValue('');
  await expect(address).toHaveAttribute('placeholder', `${new URL(baseURL!).origin}/practice-1`);
  await expect(page.getByRole('button', { name: 'Start sharing' })).toBeDisabled();
  await address.fill('https://share.example.org/practice-1');
  await page.getByRole('button', { name: 'Start sharing' }).click();
  await expect(part).toContainText('This build of the program may not connect to https://share.example.org.');
  expect(await accessibilityFaults(page)).toEqual([]);
});
