import type { OpenedRepository } from '#device/storage/openRepository';
import type { IdleLock } from '#features/lock/store/createIdleLock';
import type { Review } from '#features/review/store/review';
import { fetchExampleRecording } from '#shell/fetchExample';
import type { PatientLanguage } from '#shell/language/createPatientLanguage';
import type { Navigation } from '#shell/navigation/createNavigation';
import type { Notes } from '#shell/notes';
import { openOnce } from '#shell/openOnce';
import { saveBlob } from '#shell/saveBlob';
import { saveFile } from '#shell/saveFile';
import type { SignedLog } from '#shell/signedLog';
import type { Tracking } from '#shell/tracking/createTracking';
import { guardMirror } from './guardMirror';

interface Shared {
  baseUrl: string;
  review: Review;
  tracking: Tracking;
  navigation: Navigation;
  notes: Notes;
  language: PatientLanguage;
  idle: IdleLock;
  openRepository: () => Promise<OpenedRepository>;
  signedLog: () => Promise<SignedLog>;
}

/** The features of the page by name. Each is fetched and created when it is first asked for, once. */
export type Features = ReturnType<typeof createFeatures>;

export function createFeatures({
  baseUrl,
  review,
  tracking,
  navigation,
  notes,
  language,
  idle,
  openRepository,
  signedLog,
}: Shared) {
  const sureness = () => review.store.getState().sureness;
  const newId = () => crypto.randomUUID();
  const now = () => new Date();
  const patientIndex = openOnce(async () => {
    const { createPatientIndex } = await import('#features/patients/store/createPatientIndex');
    return createPatientIndex({ openRepository, sureness, newId, now });
  });
  const features = {
    home: openOnce(async () => {
      const [{ createHome }, { browserWorld }] = await Promise.all([
        import('#features/home/store/createHome'),
        import('#features/home/store/browserWorld'),
      ]);
      return createHome(browserWorld(baseUrl, { tracking, navigation, language }, openRepository));
    }),
    writing: openOnce(async () => {
      const [{ createPlanWriting }, { browserPlanWriting }] = await Promise.all([
        import('#features/planning/store/createPlanWriting'),
        import('#features/planning/store/browserPlanWriting'),
      ]);
      return createPlanWriting(await browserPlanWriting(notes, openRepository));
    }),
    library: openOnce(async () => {
      const [{ createLibrary }, { browserLibrary }] = await Promise.all([
        import('#features/planning/store/library/createLibrary'),
        import('#features/planning/store/library/browserLibrary'),
      ]);
      return createLibrary(browserLibrary(notes, openRepository));
    }),
    keptSessions: openOnce(async () => {
      const [{ createKeptSessions }, { browserKeptSessions }] = await Promise.all([
        import('#features/sessions/store/createKeptSessions'),
        import('#features/sessions/store/browserKeptSessions'),
      ]);
      void features.home(); // It measures what is waiting to be measured from its video.
      return createKeptSessions(
        browserKeptSessions({
          review,
          openRepository,
          log: await signedLog(),
          sureness,
          sessionsOf: async (patient) => (await patientIndex()).sessionsOf(patient),
        }),
      );
    }),
    patients: openOnce(async () => {
      const { createPatients } = await import('#features/patients/store/createPatients');
      return createPatients({
        openRepository,
        index: await patientIndex(),
        log: await signedLog(),
        sureness,
        saveFile,
        fetchExample: () => fetchExampleRecording(`${baseUrl}example/`),
        pause: () => new Promise((resume) => setTimeout(resume, 0)),
        async writePlan(draft) {
          (await features.writing()).change(draft);
          await navigation.show('plan');
        },
        newId,
        now,
      });
    }),
    clinic: openOnce(async () => {
      const [{ createClinic }, { browserClinic }] = await Promise.all([
        import('#features/sharing/store/createClinic'),
        import('#features/sharing/store/browserSending'),
      ]);
      return createClinic(browserClinic(openRepository, notes));
    }),
    people: openOnce(async () => {
      const [{ createPeople }, { browserPeople }] = await Promise.all([
        import('#features/sharing/store/people/createPeople'),
        import('#features/sharing/store/people/browserPeople'),
      ]);
      return createPeople(browserPeople(notes));
    }),
    sharing: openOnce(async () => {
      const [{ createSharing }, { browserSharing }] = await Promise.all([
        import('#features/sharing/store/replica/createSharing'),
        import('#features/sharing/store/replica/browserSharing'),
      ]);
      const sharing = createSharing(browserSharing(openRepository, notes, await signedLog()));
      await sharing.resume();
      return sharing;
    }),
    handOver: openOnce(async () => {
      const [{ createHandOver }, { browserHandOver }] = await Promise.all([
        import('#features/sharing/store/handOver/createHandOver'),
        import('#features/sharing/store/handOver/browserHandOver'),
      ]);
      return createHandOver(browserHandOver(openRepository, notes));
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
      const mirror = createMirror(browserMirror(baseUrl));
      guardMirror(navigation, mirror);
      return mirror;
    }),
    backup: openOnce(async () => {
      const { createBackup } = await import('#features/sharing/store/backup/createBackup');
      return createBackup({
        openRepository,
        saveBlob,
        now,
      });
    }),
    lockSettings: openOnce(async () => {
      const { createLockSettings } = await import('#features/lock/store/createLockSettings');
      return createLockSettings({ openRepository, idle, reload: () => location.reload() });
    }),
  };
  return features;
}
