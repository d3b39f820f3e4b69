import type { BrowserContext, Page } from '@playwright/test';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { acceptPlan } from '#tools/commands/tools/homePages';
import { replayJoints } from '#tools/commands/tools/replay/replayJoints';
import { example, shortExample } from './shortExample';

/** Videos are read slowly on a machine that does other things as well, ms. */
const longMs = 240_000;

/**
 * A patient whose camera can't be used opens the short example as a video of their own, and comes to the result, which
 * its careful measuring may still be awaited for. The joints are known: the network is not what is tested.
 *
 * @param link  to a plan of one set
 * @param careful  what the careful measuring waits for
 */
export async function toExampleResult(
  context: BrowserContext,
  link: string,
  careful?: Promise<void>,
): Promise<Page> {
  let isSaved = false;
  await replayJoints(context, recordingTrack(example));
  await context.route('**/poseWorker-*.js', async (route) => {
    if (isSaved) await careful;
    await route.fallback();
  });
  const page = await context.newPage();
  const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
  await page.goto(link);
  await acceptPlan(page);
  await press('None of these');
  await page.getByRole('radio', { name: /^1\b/ }).check({ force: true });
  await press('Continue');
  await press('Switch the camera on');
  const chooser = page.waitForEvent('filechooser');
  await press('Open a recorded video');
  await (await chooser).setFiles(await shortExample());
  const done = page.getByRole('button', { name: 'Continue' });
  await done.waitFor({ timeout: longMs });
  isSaved = true;
  await done.click();
  for (const score of [2, 1, 5]) {
    await page.getByRole('radio', { name: new RegExp(`^${score}\\b`) }).check({ force: true });
    await press('Continue');
  }
  await press('Save');
  await page.getByRole('heading', { name: 'Well done. This is how it went' }).waitFor();
  return page;
}
