import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';

/** Faults that the accessibility checker finds: its rule, and where. */
export async function accessibilityFaults(page: Page): Promise<string[]> {
  return describe(await violations(page));
}

/** Those that keep somebody from using the page, or nearly so. */
export async function seriousFaults(page: Page): Promise<string[]> {
  const found = await violations(page);
  return describe(found.filter(({ impact }) => impact === 'serious' || impact === 'critical'));
}

type Violations = Awaited<ReturnType<AxeBuilder['analyze']>>['violations'];

/** Else each look opens a page of its own to put the results of frames together: there are none here. */
async function violations(page: Page): Promise<Violations> {
  const checker = new AxeBuilder({ page }).setLegacyMode(true).options({ resultTypes: ['violations'] });
  return (await checker.analyze()).violations;
}

const describe = (found: Violations) =>
  found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`);
