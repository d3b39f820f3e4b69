import type { BrowserContext, Page } from '@playwright/test';
import { quickScrypt } from '../quickScrypt';

/**
 * Lets pages seal by a passphrase at the cost of unit tests. What is sealed says its own cost, so all else is as it is;
 * the usual cost is held by the tests of seal and wrapKey.
 */
export async function quickPassphrases(where: Page | BrowserContext): Promise<void> {
  await where.route('**/assets/seal-*.js', async (route) => {
    const response = await route.fetch();
    const script = await response.text();
    const quick = script.replace(/scryptWorkFactor=18\b/, `scryptWorkFactor=${quickScrypt}`);
    if (quick === script) throw new Error('The cost of a passphrase was not found in the built page.');
    await route.fulfill({ response, body: quick });
  });
}
