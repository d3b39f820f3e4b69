import type { OpenedRepository } from '#device/storage/openRepository';

/** Where the settings are kept. */
export const settingsKey = 'settings';

/** Whether sharing within the practice is on, without loading what it needs. */
export async function isSharing(openRepository: () => Promise<OpenedRepository>): Promise<boolean> {
  try {
    const settings = await (await openRepository()).repository.replica.get(settingsKey);
    return (settings as { isOn?: unknown } | undefined)?.isOn === true;
  } catch {
    return false; // What can't be read says so where it is shown.
  }
}
