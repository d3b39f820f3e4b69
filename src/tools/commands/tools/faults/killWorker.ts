import type { Page } from '@playwright/test';

/**
 * Ends a worker without a word, as a system short of memory does.
 *
 * @param name  part of its file's name
 */
export async function killWorker(page: Page, name: string): Promise<void> {
  const worker = page.workers().find((one) => one.url().includes(name));
  if (worker === undefined) throw new Error(`No ${name} runs.`);
  await worker.evaluate(() => self.close());
}
