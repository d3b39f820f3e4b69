import { createPatientLanguage } from '#shell/language/createPatientLanguage';
import { LanguageProvider } from '#shell/language/languageContext';
import { loadMessages, speakOnScreens } from './speakOnScreens';
import './trustedScripts';
import { StrictMode, useEffect, useLayoutEffect } from 'react';
import { createRoot } from 'react-dom/client';
import { useStore } from 'zustand';
import '@fontsource/atkinson-hyperlegible/latin-400.css';
import '@fontsource/atkinson-hyperlegible/latin-700.css';
import '../ui/theme.css';
import '../ui/controls.css';
import { openFrameSource } from '#device/frames/videosOnDemand';
import { createPoseTracker } from '#device/pose/createPoseTracker';
import { poseWeights } from '#device/pose/poseWeights';
import { carriesPlan } from '#documents/plan/carriesPlan';
import { HomeProvider } from '#features/home/homeContext';
import { LockSettingsProvider } from '#features/lock/lockContext';
import { createGate } from '#features/lock/store/createGate';
import { MirrorProvider } from '#features/mirror/mirrorContext';
import { PatientsProvider } from '#features/patients/patientsContext';
import { LibraryProvider } from '#features/planning/libraryContext';
import { PlanWritingProvider } from '#features/planning/planWritingContext';
import { ReviewProvider } from '#features/review/reviewContext';
import { browserReviewer } from '#features/review/store/browserReviewer';
import { KeptSessionsProvider } from '#features/sessions/keptSessionsContext';
import { BackupProvider } from '#features/sharing/backupContext';
import { ClinicProvider } from '#features/sharing/clinicContext';
import { HandOverProvider } from '#features/sharing/handOverContext';
import { PeopleProvider } from '#features/sharing/peopleContext';
import { SendingProvider } from '#features/sharing/sendingContext';
import { SharingProvider } from '#features/sharing/sharingContext';
import { isSharing } from '#features/sharing/store/replica/isSharing';
import { OfflineProvider } from '#features/start/offlineContext';
import { RoleProvider } from '#features/start/roleContext';
import { browserOffline } from '#features/start/store/browserOffline';
import { createOffline } from '#features/start/store/createOffline';
import { createRole, type Role } from '#shell/createRole';
import { fetchExample } from '#shell/fetchExample';
import { browserHistory } from '#shell/navigation/browserHistory';
import { createNavigation } from '#shell/navigation/createNavigation';
import { NavigationProvider, useNavigationState } from '#shell/navigation/navigationContext';
import type { ScreenName } from '#shell/navigation/place';
import { earlierNotes, openNotes } from '#shell/notes';
import { openOnce } from '#shell/openOnce';
import { rememberedSureness } from '#shell/rememberedSureness';
import { saveFile } from '#shell/saveFile';
import { createTracking } from '#shell/tracking/createTracking';
import { TrackingProvider, useTrackingState } from '#shell/tracking/trackingContext';
import { ErrorBoundary } from './ErrorBoundary';
import { createFeatures, type Features } from './features';
import { guardLeaving } from './guardLeaving';
import { inContext, lazyScreen } from './lazyScreen';
import { NotLoaded } from './NotLoaded';
import { OpeningScreen } from './OpeningScreen';
import { openTypeface } from './openTypeface';
import { troubles, watchTroubles } from './troubles';
import { watchIdle } from './watchIdle';

const LockScreen = lazyScreen(async () => (await import('#features/lock/screens/LockScreen')).LockScreen);

const nothing = () => null;
const TroublePage = lazyScreen(async () => (await import('./TroublePage')).TroublePage);
const TroubleStrip = lazyScreen(async () => (await import('./TroubleStrip')).TroubleStrip, {
  Meanwhile: nothing,
  Instead: nothing,
});
const LeaveDialog = lazyScreen(async () => (await import('./LeaveDialog')).LeaveDialog, {
  Meanwhile: nothing,
});

const baseUrl = new URL('./', location.href).href;
watchTroubles(window, baseUrl);
const root = createRoot(document.getElementById('app')!);
const firstPlan = takePlanFromAddress();
root.render(<OpeningScreen />);

// What is kept may be locked: nothing else is shown or read before it is open.
const gate = createGate();
gate.store.subscribe(({ state }) => {
  if (state === 'open') return;
  root.render(<LockScreen gate={gate} />);
});
/** One for the whole page: where the device stores nothing, all parts must share what is in memory. */
const openRepositoryOnce = openOnce(async () => {
  const { openRepository } = await import('#device/storage/openRepository');
  return openRepository(undefined, (device) => gate.ask(device));
});
/** Everything waits for what is kept, which may be locked. */
async function openPage(): Promise<void> {
  const [notes, { createReview }] = await Promise.all([
    openNotes(openRepositoryOnce, earlierNotes()),
    import('#features/review/store/createReview'),
    openTypeface(document.fonts),
  ]);
  const signedLog = openOnce(async () => {
    const { browserSignedLog } = await import('#shell/browserSignedLog');
    return browserSignedLog(openRepositoryOnce, notes);
  });
  // Needed once something is kept for a patient.
  const patients = openOnce(async () => {
    const { browserPatients } = await import('#features/review/store/browserPatients');
    return browserPatients({
      openRepository: openRepositoryOnce,
      log: await signedLog(),
      newId: () => crypto.randomUUID(),
      now: () => new Date(),
    });
  });

  /** A review needs a recording, which does not outlast the page. */
  let hasRecording = false;
  const role = createRole(notes);
  const language = await createPatientLanguage(notes, loadMessages);
  const navigation = createNavigation(
    browserHistory(),
    (screen) => screen !== 'review' || hasRecording,
    await workplaceOf(role.store.getState().role, notes.isLasting),
  );
  speakOnScreens({ navigation, role, language, html: document.documentElement });
  const tracking = createTracking({
    openFrameSource,
    createTracker: () => createPoseTracker(baseUrl),
    weights: poseWeights,
  });
  const review = createReview({
    navigation,
    openFrameSource,
    tracking,
    fetchExample: () => fetchExample(`${baseUrl}example/`),
    saveFile,
    reviewer: browserReviewer(notes),
    patients: {
      pseudonyms: async () => (await patients()).pseudonyms(),
      keep: async (...what) => (await patients()).keep(...what),
    },
    sureness: rememberedSureness(notes),
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
    later: (call) => setTimeout(call, 0),
  });
  review.store.subscribe(({ recording }) => (hasRecording = recording !== null));
  guardLeaving(navigation, { review, tracking });
  addEventListener('beforeunload', (event) => {
    if (navigation.holdsWork()) event.preventDefault();
  });
  const offline = createOffline(browserOffline());
  const idle = watchIdle({ notes, navigation, openRepository: openRepositoryOnce });
  const features = createFeatures({
    baseUrl,
    review,
    tracking,
    navigation,
    notes,
    language,
    idle,
    openRepository: openRepositoryOnce,
    signedLog,
  });
  // A plan that came with the link opens at once.
  const openLink = (hash: string | null) => {
    if (hash === null) return;
    const { pathname, search } = location;
    if (role.store.getState().role === null) role.choose('exercises');
    void navigation.show('home').then((isShown) => {
      if (!isShown) return;
      features.home().then(
        (home) => home.openPlanLink(hash),
        // For when the page is loaded again.
        () => history.replaceState(history.state, '', pathname + search + hash),
      );
    });
  };
  openLink(firstPlan);
  addEventListener('hashchange', () => openLink(takePlanFromAddress()));

  void isSharing(openRepositoryOnce).then((isOn) => (isOn ? features.sharing() : null));
  const screens = createScreens(features);
  root.render(
    <StrictMode>
      <ErrorBoundary instead={() => <NotLoaded />}>
        <NavigationProvider value={navigation}>
          <TrackingProvider value={tracking}>
            <ReviewProvider value={review}>
              <OfflineProvider value={offline}>
                <RoleProvider value={role}>
                  <LanguageProvider value={language}>
                    <CurrentScreen
                      screens={screens}
                      onStart={() => void navigation.show('start', true)}
                      onSave={() => (hasRecording ? review.saveRecording : null)}
                    />
                  </LanguageProvider>
                </RoleProvider>
              </OfflineProvider>
            </ReviewProvider>
          </TrackingProvider>
        </NavigationProvider>
      </ErrorBoundary>
    </StrictMode>,
  );
}

/** Where somebody works: on today's exercises, or on the sessions of patients where there are any. */
async function workplaceOf(role: Role | null, hasKept: boolean): Promise<ScreenName> {
  if (role === 'exercises') return 'home';
  if (role === null || !hasKept) return 'start';
  const ids = await openRepositoryOnce().then(
    ({ repository }) => repository.sessions.ids(),
    () => [],
  );
  return ids.length > 0 ? 'patients' : 'start';
}

/** The plan of a link, which does not stay in the address: others could read it there, at the lock too. */
function takePlanFromAddress(): string | null {
  const { hash, pathname, search } = location;
  if (!carriesPlan(hash)) return null;
  history.replaceState(history.state, '', pathname + search);
  return hash;
}

function createScreens(features: Features) {
  const home = inContext(HomeProvider, features.home);
  const writing = inContext(PlanWritingProvider, features.writing);
  const library = inContext(LibraryProvider, features.library);
  const keptSessions = inContext(KeptSessionsProvider, features.keptSessions);
  const patients = inContext(PatientsProvider, features.patients);
  const clinic = inContext(ClinicProvider, features.clinic);
  const handOver = inContext(HandOverProvider, features.handOver);
  const people = inContext(PeopleProvider, features.people);
  const sharing = inContext(SharingProvider, features.sharing);
  const sending = inContext(SendingProvider, features.sending);
  const mirror = inContext(MirrorProvider, features.mirror);
  const backup = inContext(BackupProvider, features.backup);
  const lockSettings = inContext(LockSettingsProvider, features.lockSettings);
  return {
    start: lazyScreen(async () => (await import('#features/start/screens/StartScreen')).StartScreen),
    backup: lazyScreen(async () => (await import('#features/sharing/screens/BackupButton')).BackupButton, {
      openers: [backup],
      Meanwhile: nothing,
      Instead: nothing,
    }),
    tracking: lazyScreen(
      async () => (await import('#features/review/screens/tracking/TrackingScreen')).TrackingScreen,
    ),
    review: lazyScreen(async () => (await import('#features/review/screens/ReviewScreen')).ReviewScreen),
    home: lazyScreen(async () => (await import('#features/home/screens/HomeScreen')).HomeScreen, {
      openers: [home, sending],
    }),
    sessions: lazyScreen(
      async () => (await import('#features/sessions/screens/SessionsScreen')).SessionsScreen,
      { openers: [keptSessions, clinic, people, backup, lockSettings] },
    ),
    patients: lazyScreen(
      async () => (await import('#features/patients/screens/PatientsScreen')).PatientsScreen,
      { openers: [patients, keptSessions, clinic, people, sharing, handOver, backup, lockSettings] },
    ),
    patient: lazyScreen(
      async () => (await import('#features/patients/screens/PatientScreen')).PatientScreen,
      { openers: [patients, keptSessions, writing, people, handOver] },
    ),
    plan: lazyScreen(async () => (await import('#features/planning/screens/PlanScreen')).PlanScreen, {
      openers: [writing, library, clinic, people],
    }),
    mirror: lazyScreen(async () => (await import('#features/mirror/screens/MirrorScreen')).MirrorScreen, {
      openers: [mirror],
    }),
  };
}

const fetchAheadAfterMs = 300;

interface CurrentScreenProps {
  screens: ReturnType<typeof createScreens>;
  onStart: () => void;
  /** Gives what saves the open recording; null where none is open. */
  onSave: () => (() => void) | null;
}

function CurrentScreen({ screens, onStart, onSave }: CurrentScreenProps) {
  const isTracking = useTrackingState((state) => state.isTracking);
  const screen = useNavigationState((state) => state.screen);
  const isAsking = useNavigationState((state) => state.question !== null);
  const hasTrouble = useStore(troubles, ({ error }) => error !== null);
  const name = isTracking ? 'tracking' : screen;
  const Screen = screens[name];
  useLayoutEffect(() => {
    scrollTo(0, 0);
  }, [screen, isTracking]);
  useEffect(() => {
    if (name !== 'patients' && name !== 'patient') return;
    // Where most go from here. What is shown goes first.
    const timer = setTimeout(() => {
      screens.patient.fetchAhead();
      screens.review.fetchAhead();
    }, fetchAheadAfterMs);
    return () => clearTimeout(timer);
  }, [name, screens]);
  return (
    // With its key, the screen that is left goes at once, and does not wait out of sight for the next one's code.
    <>
      <ErrorBoundary
        key={name}
        instead={(thrown, tryAgain) => (
          <TroublePage
            thrown={thrown}
            screen={name}
            onStart={() => {
              onStart();
              if (name === 'start') tryAgain();
            }}
            onSave={onSave()}
            Backup={screens.backup}
          />
        )}
      >
        <Screen />
      </ErrorBoundary>
      {hasTrouble && <TroubleStrip screen={name} />}
      {isAsking && <LeaveDialog />}
    </>
  );
}

openPage().catch((error: unknown) => {
  root.render(<NotLoaded />);
  throw error;
});
