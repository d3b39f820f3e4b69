import type { OpenedRepository } from '../storage/openRepository';
import type { App } from './createApp';
import type { Notes } from './notes';
import { openOnce } from './openOnce';
import { saveBlob } from './saveBlob';

interface Shared {
  baseUrl: string;
  app: App;
  notes: Notes;
  openRepository: () => Promise<OpenedRepository>;
}

/** The features of the page by name. Each is fetched and created when it is first asked for, once. */
export type Features = ReturnType<typeof createFeatures>;

export function createFeatures({ baseUrl, app, notes, openRepository }: Shared) {
  const features = {
    home: openOnce(async () => {
      const [{ createHome }, { browserWorld }] = await Promise.all([
        import('./home/createHome'),
        import('./home/browserWorld'),
      ]);
      return createHome(browserWorld(baseUrl, app, openRepository));
    }),
    writing: openOnce(async () => {
      const [{ createPlanWriting }, { browserPlanWriting }] = await Promise.all([
        import('./planWriting/createPlanWriting'),
        import('./planWriting/browserPlanWriting'),
      ]);
      return createPlanWriting(browserPlanWriting(notes, openRepository));
    }),
    inbox: openOnce(async () => {
      const [{ createInbox }, { browserInbox }] = await Promise.all([
        import('./inbox/createInbox'),
        import('./inbox/browserInbox'),
      ]);
      return createInbox(
        browserInbox({
          app,
          openRepository,
          measureWaiting: () => void features.home().then((home) => home.enter()),
          forgetPatient: (patient) => void features.writing().then((writing) => writing.forget(patient)),
        }),
      );
    }),
    clinic: openOnce(async () => {
      const [{ createClinic }, { browserClinic }] = await Promise.all([
        import('./sending/createClinic'),
        import('./sending/browserSending'),
      ]);
      return createClinic(
        browserClinic(openRepository, notes, () => {
          if (app.store.getState().screen === 'inbox') void features.inbox().then((inbox) => inbox.enter());
        }),
      );
    }),
    sending: openOnce(async () => {
      const [{ createSending }, { browserSending }] = await Promise.all([
        import('./sending/createSending'),
        import('./sending/browserSending'),
      ]);
      return createSending(browserSending(openRepository));
    }),
    mirror: openOnce(async () => {
      const [{ createMirror }, { browserMirror }] = await Promise.all([
        import('./mirror/createMirror'),
        import('./mirror/browserMirror'),
      ]);
      return createMirror(browserMirror(baseUrl));
    }),
    backup: openOnce(async () => {
      const { createBackup } = await import('./backup/createBackup');
      return createBackup({
        openRepository,
        saveBlob,
        now: () => new Date(),
        onRestored() {
          void features.clinic().then((clinic) => clinic.lookAnew());
          void features.inbox().then((inbox) => inbox.enter());
        },
      });
    }),
    lockSettings: openOnce(async () => {
      const { createLockSettings } = await import('./lock/createLockSettings');
      return createLockSettings({ openRepository, reload: () => location.reload() });
    }),
  };
  return features;
}
