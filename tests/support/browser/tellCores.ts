import type { Page } from '@playwright/test';

/** Tells the pose worker that the device has this many cores: wasm starts one thread for every two of them. */
export async function tellCores(page: Page, cores: number): Promise<void> {
  await page.route('**/assets/poseWorker-*.js', async (route) => {
    const response = await route.fetch();
    const script = `Object.defineProperty(navigator, 'hardwareConcurrency', { value: ${cores} });\n`;
    await route.fulfill({ response, body: script + (await response.text()) });
  });
}
