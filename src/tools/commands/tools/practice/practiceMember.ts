import type { Browser, BrowserContext, Page } from '@playwright/test';
import type {} from '../../../headless/storage';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { nobody } from '#documents/practice/peopleNote';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { newKeyPair, type KeyPair } from '#shell/seal';
import { deviceOf } from '../deviceOf';

/** Somebody of a practice, in a browser of their own. */
export interface PracticeMember {
  initials: string;
  context: BrowserContext;
  /** The program. */
  page: Page;
  /** Starts sharing, as a person does. */
  start(address: string): Promise<void>;
  /** Keeps patients and sessions as another tab of the program would. */
  keep(patients: readonly PatientDocument[], sessions: readonly SessionDocument[]): Promise<void>;
  /** Changes what is noted of a patient. */
  note(patientId: string, change: Partial<PatientDocument>): Promise<void>;
  kept(): Promise<{ patients: PatientDocument[]; sessionIds: string[] }>;
}

/**
 * Members of one practice, whose keys each of them has.
 *
 * @param url  of the built pages
 * @param serverOrigin  to which the pages may connect: it is put into their policy on the way, as whoever serves them would
 */
export async function openPractice(
  browser: Browser,
  url: string,
  serverOrigin: string,
  names: readonly string[],
): Promise<PracticeMember[]> {
  const keys = await Promise.all(names.map(() => newKeyPair()));
  return Promise.all(
    names.map((initials, index) => openMember(browser, { url, serverOrigin, names, keys, initials, index })),
  );
}

interface Opened {
  url: string;
  serverOrigin: string;
  names: readonly string[];
  keys: readonly KeyPair[];
  initials: string;
  index: number;
}

async function openMember(
  browser: Browser,
  { url, serverOrigin, names, keys, initials, index }: Opened,
): Promise<PracticeMember> {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    storageState: deviceOf('treats', new URL(url).origin),
    serviceWorkers: 'block',
    bypassCSP: false,
    permissions: ['local-network-access'], // Chromium asks a person before a page may reach this machine.
  });
  await context.route(
    (address) => address.href.startsWith(url) && /\/(index\.html)?$/.test(address.pathname),
    async (route) => {
      const answer = await route.fetch();
      const widened = (text: string) => text.replace('connect-src ', `connect-src ${serverOrigin} `);
      const headers = Object.entries(answer.headers()).map(([name, value]) => [name, widened(value)]);
      await route.fulfill({
        body: widened(await answer.text()),
        headers: Object.fromEntries(headers) as Record<string, string>,
      });
    },
  );
  const storage = await context.newPage();
  await storage.goto(new URL('tools/headless/storage.html', url).href);
  await storage.waitForFunction(() => 'storagePage' in window);
  const colleagues = names
    .map((name, at) => ({ initials: name, key: keys[at]!.recipient }))
    .filter((_, at) => at !== index);
  await storage.evaluate(
    async ({ key, people }) => {
      const { repository } = await window.storagePage.openRepository();
      await repository.notes.write('keys', key);
      await repository.notes.write('people', people);
      Object.assign(window, { kept: repository });
    },
    { key: JSON.stringify([keys[index]]), people: JSON.stringify({ ...nobody, initials, colleagues }) },
  );
  const page = await context.newPage();
  await page.goto(url);
  return {
    initials,
    context,
    page,
    async start(address) {
      const heading = page.getByRole('heading', { level: 1, name: 'Patients' });
      const open = page.getByRole('button', { name: 'Patients', exact: true });
      await heading.or(open).first().waitFor();
      if (await open.isVisible()) await open.click();
      await page.getByRole('button', { name: 'Practice', exact: true }).click();
      await page.getByLabel('Address of the practice’s database').fill(address);
      await page.getByRole('button', { name: 'Start sharing' }).click();
      await page.getByRole('button', { name: 'Stop sharing' }).waitFor();
    },
    keep: (patients, sessions) =>
      storage.evaluate(
        async (given) => {
          for (const patient of given.patients) await window.kept.patients.add(patient);
          for (const session of given.sessions) await window.kept.sessions.save(session);
        },
        { patients: [...patients], sessions: [...sessions] },
      ),
    note: (patientId, change) =>
      storage.evaluate(
        async (given) => {
          await window.kept.patients.update(given.patientId, (before) => ({ ...before, ...given.change }));
        },
        { patientId, change },
      ),
    kept: () =>
      storage.evaluate(async () => ({
        patients: (await window.kept.patients.list()).found,
        sessionIds: [...(await window.kept.sessions.ids())],
      })),
  };
}

declare global {
  interface Window {
    /** What is kept on this device, opened beside the program. */
    kept: Awaited<ReturnType<Window['storagePage']['openRepository']>>['repository'];
  }
}
