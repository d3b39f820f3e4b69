import type { BrowserContextOptions } from '@playwright/test';
import type { Role } from '#shell/createRole';

/** What the browser of somebody keeps who said before what they use it for; the page migrates it. */
export function deviceOf(
  role: Role,
  origin: string,
): Exclude<NonNullable<BrowserContextOptions['storageState']>, string> {
  return { cookies: [], origins: [{ origin, localStorage: [{ name: 'overfoot-role', value: role }] }] };
}
