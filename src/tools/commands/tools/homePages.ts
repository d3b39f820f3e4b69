import type { Page } from '@playwright/test';
import type { PlanDocument } from '#documents/plan/planDocument';
import { giveFile } from './giveFile';

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();
/** The label lies over the button that it belongs to. */
const choose = (page: Page, score: number) =>
  page.getByRole('radio', { name: new RegExp(`^${score}\\b`) }).check({ force: true });

/** Goes from the first screen to one's own exercises; a device may open on them, or on kept sessions. */
export async function goHome(page: Page): Promise<void> {
  const door = page.getByRole('button', { name: /^(Record yourself|I exercise)$/ });
  const home = page.getByRole('heading', { level: 1, name: /^(Record yourself at home|Today)$/ });
  const back = page.getByRole('button', { name: 'Back to the start' });
  await door.or(home).or(back).first().waitFor();
  if (await home.isVisible()) return;
  if (await back.isVisible()) await back.click();
  await door.click();
}

/** Goes from the first screen to what a plan asks for, with the plan as a file. */
export async function openPlanFile(page: Page, plan: PlanDocument): Promise<void> {
  await goHome(page);
  // Where a plan is kept already, its day is shown first.
  const more = page.getByRole('button', { name: 'More', exact: true });
  await more.or(page.getByRole('button', { name: 'Record without a plan' })).waitFor();
  if (await more.isVisible()) {
    await more.click();
    await press(page, 'Another plan, or none');
  }
  const bytes = Buffer.from(JSON.stringify(plan));
  await giveFile(page, { name: 'plan.json', mimeType: 'application/json', bytes });
}

/** Reads what a plan asks for, page by page, and says that all is ready. */
export async function acceptPlan(page: Page): Promise<void> {
  for (const title of [/^(Hello|What you are going to do)/, 'Have this ready']) {
    await page.getByRole('heading', { level: 1, name: title }).waitFor();
    await press(page, 'Continue');
  }
  await press(page, 'Yes, I am ready');
}

/** Goes from the first screen to the page that asks for the camera, with the plan as a file. */
export async function goToCamera(page: Page, plan: PlanDocument): Promise<void> {
  await openPlanFile(page, plan);
  await acceptPlan(page);
  // Whether all warning signs are asked for, or what is new.
  await press(page, /^(None of these|Nothing new)$/);
  await choose(page, 1);
  await press(page, 'Continue');
}

/** Switches the camera on and begins, on a chair that stands firm. */
export async function goToSet(page: Page): Promise<void> {
  await press(page, 'Switch the camera on');
  await press(page, 'Begin');
  await press(page, 'Yes, it stands firm');
}

/** Answers how much it hurt in the set and hurts now, and how hard it was. */
export async function answerScales(page: Page): Promise<void> {
  for (const score of [2, 1, 5]) {
    await choose(page, score);
    await press(page, 'Continue');
  }
}
