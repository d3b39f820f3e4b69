import type { BrowserContext, Page } from '@playwright/test';
import { bundle } from '../replay/bundle';
import type { Filmed } from './patient';

/** Gives pages a camera that films somebody who does what the screen asks, and a voice that takes its time. */
export async function actAsPatient(where: Page | BrowserContext, film: Filmed): Promise<void> {
  const script = await bundle(new URL('./patient.ts', import.meta.url));
  await where.addInitScript({ content: `window.filmed = ${JSON.stringify(film)};\n{${script}}` });
}
