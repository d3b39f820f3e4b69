import type { Locator, Page } from '@playwright/test';

/** How far it is from the first page to something that is done often, clicked through once. */
export interface Way {
  /** Trusted clicks that the page saw; typing, and choosing a file in the system's window, are none. */
  clicks: number;
  /** From the first press to what was wanted on the screen. */
  seconds: number;
}

/** What the ways lead to. */
export interface ClinicWays {
  /** The example's most telling repetition, shown with its cue. */
  exampleToCue: Way;
  /** The code of a new plan with one exercise. */
  newPlanToCode: Way;
  /** A sealed file's session among those of its patient, with its verdict. */
  fileToVerdict: Way;
  /** The report of the patient who needs a look first. */
  patientToReport: Way;
}

/** A file that a patient sent, and who that is. */
export interface SentFile {
  name: string;
  bytes: Uint8Array;
  patient: string;
}

/** Clicks each way from the list of patients, with which the program opens where there are any. */
export async function clickThrough(page: Page, sent: SentFile): Promise<ClinicWays> {
  const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true });
  const exampleToCue = await walk(page, async () => {
    await button('Back to the start').click();
    await button('Open the example').click();
    await button('Show this one').click();
    return page.getByRole('dialog', { name: 'Cue for the patient' });
  });
  const newPlanToCode = await walk(page, async () => {
    await button('Write a plan').click();
    await page.getByLabel('Patient’s pseudonym').and(page.locator(':focus')).waitFor();
    await page.keyboard.type('Amber Finch 31');
    await button('Split-stance sit-to-stand, right leg').click();
    await button('Link and code').click();
    return page.getByRole('img', { name: 'The plan as a QR code' });
  });
  const fileToVerdict = await walk(page, async () => {
    const chooser = page.waitForEvent('filechooser');
    await button('Open sent sessions').click();
    const file = { name: sent.name, mimeType: 'application/octet-stream', buffer: Buffer.from(sent.bytes) };
    await (await chooser).setFiles(file);
    await button(`Show ${sent.patient}`).click();
    return page.locator('.course-set').first();
  });
  const patientToReport = await walk(page, async () => {
    await page.locator('.patients-line').first().click();
    await button('Report').click();
    return page.getByRole('article', { name: 'Report' });
  });
  return { exampleToCue, newPlanToCode, fileToVerdict, patientToReport };
}

/** Opens the page again, and walks from there. */
async function walk(page: Page, steps: () => Promise<Locator>): Promise<Way> {
  const { origin } = new URL(page.url());
  await page.goto('about:blank'); // Otherwise the page would show where it was.
  await page.goto(origin);
  await page.locator('.patients-line').first().waitFor();
  await page.evaluate(() => {
    const state = window as unknown as { clicks: number };
    state.clicks = 0;
    window.addEventListener(
      'click',
      ({ isTrusted }) => {
        if (isTrusted) state.clicks++;
      },
      true,
    );
  });
  const fromMs = performance.now();
  const wanted = await steps();
  await wanted.waitFor();
  const seconds = (performance.now() - fromMs) / 1000;
  const clicks = await page.evaluate(() => (window as unknown as { clicks: number }).clicks);
  return { clicks, seconds };
}
