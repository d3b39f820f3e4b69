import { expect, test } from '@playwright/test';
import { openPractice, type PracticeMember } from '#tools/commands/tools/practice/practiceMember';
import { startReplicaServer } from '#tools/commands/tools/practice/startReplicaServer';
import { accessibilityFaults } from '../support/browser/accessibilityFaults';
import { inventedPatient, inventedSession } from '../support/practice/invented';

const heron = inventedPatient('Blue Heron 7');
const status = ({ page }: PracticeMember) => page.getByRole('status').filter({ hasText: /\.|…/ });

test.setTimeout(60_000);

test('two colleagues share patients and sessions through a server, offline meanwhile, and both edits stay', async ({
  browser,
  baseURL,
}) => {
  const server = await startReplicaServer();
  const origin = new URL(server.address).origin;
  const [ab, kn] = (await openPractice(browser, baseURL!, origin, ['AB', 'KN'])) as [
    PracticeMember,
    PracticeMember,
  ];
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
  await Promise.all([ab.context.close(), kn.context.close(), server.stop()]);
});
