import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Makes a browser that is started with this folder as its profile refuse to store anything. */
export function refuseStorage(profile: string): void {
  mkdirSync(join(profile, 'Default'));
  const refuse = { profile: { default_content_setting_values: { cookies: 2 } } };
  writeFileSync(join(profile, 'Default/Preferences'), JSON.stringify(refuse));
}
