import { StrictMode, Suspense, useLayoutEffect } from 'react';
import { createRoot } from 'react-dom/client';
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
import { PlanWritingProvider } from '#features/planning/planWritingContext';
import { ReviewProvider } from '#features/review/reviewContext';
import { browserReviewer } from '#features/review/store/browserReviewer';
import { KeptSessionsProvider } from '#features/sessions/keptSessionsContext';
import { BackupProvider } from '#features/sharing/backupContext';
import { ClinicProvider } from '#features/sharing/clinicContext';
import { SendingProvider } from '#features/sharing/sendingContext';
import { OfflineProvider } from '#features/start/offlineContext';
import { StartScreen } from '#features/start/screens/StartScreen';
import { browserOffline } from '#features/start/store/browserOffline';
import { createOffline } from '#features/start/store/createOffline';
import { fetchExample } from '#shell/fetchExample';
import { browserHistory } from '#shell/navigation/browserHistory';
import { createNavigation } from '#shell/navigation/createNavigation';
import { NavigationProvider, useNavigationState } from '#shell/navigation/navigationContext';
import { earlierNotes, openNotes } from '#shell/notes';
import { openOnce } from '#shell/openOnce';
import { saveFile } from '#shell/saveFile';
import { createTracking } from '#shell/tracking/createTracking';
import { TrackingProvider, useTrackingState } from '#shell/tracking/trackingContext';
import { createFeatures, type Features } from './features';
import { guardLeaving } from './guardLeaving';
import { inContext, lazyScreen } from './lazyScreen';
import { NotLoaded } from './NotLoaded';
import { OpeningScreen } from './OpeningScreen';

const LockScreen = lazyScreen(
  async () => (await import('#features/lock/screens/LockScreen')).LockScreen,
  NotLoaded,
);

const LeaveDialog = lazyScreen(async () => (await import('./LeaveDialog')).LeaveDialog, NotLoaded);

const baseUrl = new URL('./', location.href).href;
const root = createRoot(document.getElementById('app')!);

// What is kept may be locked: nothing else is shown or read before it is open.
const gate = createGate();
gate.store.subscribe(({ state }) => {
  if (state === 'open') return;
  root.render(
    <Suspense fallback={<OpeningScreen />}>
      <LockScreen gate={gate} />
    </Suspense>,
  );
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
  ]);

  /** A review needs a recording, which does not outlast the page. */
  let hasRecording = false;
  const navigation = createNavigation(browserHistory(), (screen) => screen !== 'review' || hasRecording);
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
  const features = createFeatures({
    baseUrl,
    review,
    tracking,
    navigation,
    notes,
    openRepository: openRepositoryOnce,
  });
  // A plan that came with the link opens at once, and does not stay in the address, where others could read it.
  const openLink = () => {
    const { hash, pathname, search } = location;
    if (!carriesPlan(hash)) return;
    history.replaceState(history.state, '', pathname + search);
    void navigation.show('home').then((isShown) => {
      if (!isShown) return;
      features.home().then(
        (home) => home.openPlanLink(hash),
        // For when the page is loaded again.
        () => history.replaceState(history.state, '', pathname + search + hash),
      );
    });
  };
  openLink();
  addEventListener('hashchange', openLink);

  const screens = createScreens(features);
  root.render(
    <StrictMode>
      <NavigationProvider value={navigation}>
        <TrackingProvider value={tracking}>
          <ReviewProvider value={review}>
            <OfflineProvider value={offline}>
              <CurrentScreen screens={screens} />
            </OfflineProvider>
          </ReviewProvider>
        </TrackingProvider>
      </NavigationProvider>
    </StrictMode>,
  );
}

function createScreens(features: Features) {
  const home = inContext(HomeProvider, features.home);
  const writing = inContext(PlanWritingProvider, features.writing);
  const keptSessions = inContext(KeptSessionsProvider, features.keptSessions);
  const clinic = inContext(ClinicProvider, features.clinic);
  const sending = inContext(SendingProvider, features.sending);
  const mirror = inContext(MirrorProvider, features.mirror);
  const backup = inContext(BackupProvider, features.backup);
  const lockSettings = inContext(LockSettingsProvider, features.lockSettings);
  return {
    start: StartScreen,
    tracking: lazyScreen(
      async () => (await import('#features/review/screens/tracking/TrackingScreen')).TrackingScreen,
      NotLoaded,
    ),
    review: lazyScreen(
      async () => (await import('#features/review/screens/ReviewScreen')).ReviewScreen,
      NotLoaded,
    ),
    home: lazyScreen(async () => (await import('#features/home/screens/HomeScreen')).HomeScreen, NotLoaded, [
      home,
      sending,
    ]),
    sessions: lazyScreen(
      async () => (await import('#features/sessions/screens/SessionsScreen')).SessionsScreen,
      NotLoaded,
      [keptSessions, clinic, backup, lockSettings],
    ),
    plan: lazyScreen(
      async () => (await import('#features/planning/screens/PlanScreen')).PlanScreen,
      NotLoaded,
      [writing, clinic],
    ),
    mirror: lazyScreen(
      async () => (await import('#features/mirror/screens/MirrorScreen')).MirrorScreen,
      NotLoaded,
      [mirror],
    ),
  };
}

function CurrentScreen({ screens }: { screens: ReturnType<typeof createScreens> }) {
  const isTracking = useTrackingState((state) => state.isTracking);
  const screen = useNavigationState((state) => state.screen);
  const isAsking = useNavigationState((state) => state.question !== null);
  const Screen = screens[isTracking ? 'tracking' : screen];
  useLayoutEffect(() => {
    scrollTo(0, 0);
  }, [screen, isTracking]);
  return (
    // With its key, the screen that is left goes at once, and does not wait out of sight for the next one's code.
    <>
      <Suspense key={isTracking ? 'tracking' : screen} fallback={<OpeningScreen />}>
        <Screen />
      </Suspense>
      {isAsking && (
        <Suspense>
          <LeaveDialog />
        </Suspense>
      )}
    </>
  );
}

openPage().catch((error: unknown) => {
  root.render(<NotLoaded />);
  throw error;
});
