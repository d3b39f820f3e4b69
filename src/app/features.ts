import type { OpenedRepository } from '#device/storage/openRepository';
import type { App } from '#features/review/store/createApp';
import type { Notes } from '#shell/notes';
import { openOnce } from '#shell/openOnce';
import { saveBlob } from '#shell/saveBlob';

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
        import('#features/home/store/createHome'),
        import('#features/home/store/browserWorld'),
      ]);
      return createHome(browserWorld(baseUrl, app, openRepository));
    }),
    writing: openOnce(async () => {
      const [{ createPlanWriting }, { browserPlanWriting }] = await Promise.all([
        import('#features/planning/store/createPlanWriting'),
        import('#features/planning/store/browserPlanWriting'),
      ]);
      return createPlanWriting(browserPlanWriting(notes, openRepository));
    }),
    keptSessions: openOnce(async () => {
      const [{ createKeptSessions }, { browserKeptSessions }] = await Promise.all([
        import('#features/sessions/store/createKeptSessions'),
        import('#features/sessions/store/browserKeptSessions'),
      ]);
      return createKeptSessions(
        browserKeptSessions({
          app,
          openRepository,
          measureWaiting: () => void features.home().then((home) => home.enter()),
          forgetPatient: (patient) => void features.writing().then((writing) => writing.forget(patient)),
        }),
      );
    }),
    clinic: openOnce(async () => {
      const [{ createClinic }, { browserClinic }] = await Promise.all([
        import('#features/sharing/store/createClinic'),
        import('#features/sharing/store/browserSending'),
      ]);
      return createClinic(
        browserClinic(openRepository, notes, () => {
          if (app.store.getState().screen === 'inbox')
            void features.keptSessions().then((kept) => kept.enter());
        }),
      );
    }),
    sending: openOnce(async () => {
      const [{ createSending }, { browserSending }] = await Promise.all([
        import('#features/sharing/store/createSending'),
        import('#features/sharing/store/browserSending'),
      ]);
      return createSending(browserSending(openRepository));
    }),
    mirror: openOnce(async () => {
      const [{ createMirror }, { browserMirror }] = await Promise.all([
        import('#features/mirror/store/createMirror'),
        import('#features/mirror/store/browserMirror'),
      ]);
      return createMirror(browserMirror(baseUrl));
    }),
    backup: openOnce(async () => {
      const { createBackup } = await import('#features/sharing/store/backup/createBackup');
      return createBackup({
        openRepository,
        saveBlob,
        now: () => new Date(),
        onRestored() {
          void features.clinic().then((clinic) => clinic.lookAnew());
          void features.keptSessions().then((kept) => kept.enter());
        },
      });
    }),
    lockSettings: openOnce(async () => {
      const { createLockSettings } = await import('#features/lock/store/createLockSettings');
      return createLockSettings({ openRepository, reload: () => location.reload() });
    }),
  };
  return features;
}
