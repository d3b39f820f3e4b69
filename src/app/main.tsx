import { StrictMode, Suspense, useLayoutEffect } from 'react';
import { createRoot } from 'react-dom/client';
import '@fontsource/atkinson-hyperlegible/latin-400.css';
import '@fontsource/atkinson-hyperlegible/latin-700.css';
import './theme.css';
import './controls.css';
import { openFrameSource } from '../frames/videosOnDemand';
import { carriesPlan } from '../handover/carriesPlan';
import { createPoseTracker } from '../pose/createPoseTracker';
import { poseWeights } from '../pose/poseWeights';
import { NotLoaded } from '../screens/opening/NotLoaded';
import { OpeningScreen } from '../screens/opening/OpeningScreen';
import { StartScreen } from '../screens/start/StartScreen';
import { browserReviewer } from './review/browserReviewer';
import { createFeatures, type Features } from './features';
import { fetchExample } from './fetchExample';
import { createGate } from './lock/createGate';
import { earlierNotes, openNotes } from './notes';
import { browserOffline } from './offline/browserOffline';
import { createOffline } from './offline/createOffline';
import { openOnce } from './openOnce';
import { PageProvider, useAppState } from './PageContext';
import { lazyScreen } from './lazyScreen';
import { saveFile } from './saveFile';

const LockScreen = lazyScreen(async () => (await import('../screens/lock/LockScreen')).LockScreen, NotLoaded);

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
/** One for all of the page: where the device keeps nothing, what is in memory must be the same everywhere. */
const openRepositoryOnce = openOnce(async () => {
  const { openRepository } = await import('../storage/openRepository');
  return openRepository(undefined, (device) => gate.ask(device));
});
/** Everything waits for what is kept, which may be locked. */
async function openPage(): Promise<void> {
  const [notes, { createApp }] = await Promise.all([
    openNotes(openRepositoryOnce, earlierNotes()),
    import('./createApp'),
  ]);

  const app = createApp({
    openFrameSource,
    createTracker: () => createPoseTracker(baseUrl),
    fetchExample: () => fetchExample(`${baseUrl}example/`),
    saveFile,
    weights: poseWeights,
    reviewer: browserReviewer(notes),
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
    later: (call) => setTimeout(call, 0),
  });
  const offline = createOffline(browserOffline());
  const features = createFeatures({ baseUrl, app, notes, openRepository: openRepositoryOnce });
  // A plan that came with the link opens at once, and does not stay in the address, where others could read it.
  const openLink = () => {
    const { hash, pathname, search } = location;
    if (!carriesPlan(hash)) return;
    history.replaceState(null, '', pathname + search);
    app.show('home');
    features.home().then(
      (home) => home.openPlanLink(hash),
      () => history.replaceState(null, '', pathname + search + hash), // For when the page is loaded again.
    );
  };
  openLink();
  addEventListener('hashchange', openLink);

  const screens = createScreens(features);
  root.render(
    <StrictMode>
      <PageProvider page={{ app, offline }}>
        <CurrentScreen screens={screens} />
      </PageProvider>
    </StrictMode>,
  );
}

function createScreens({ home, sending, inbox, clinic, backup, lockSettings, writing, mirror }: Features) {
  return {
    start: StartScreen,
    tracking: lazyScreen(
      async () => (await import('../screens/tracking/TrackingScreen')).TrackingScreen,
      NotLoaded,
    ),
    review: lazyScreen(async () => (await import('../screens/review/ReviewScreen')).ReviewScreen, NotLoaded),
    home: lazyScreen(async () => (await import('../screens/home/HomeScreen')).HomeScreen, NotLoaded, {
      home,
      sending,
    }),
    inbox: lazyScreen(async () => (await import('../screens/inbox/InboxScreen')).InboxScreen, NotLoaded, {
      ...{ inbox, clinic, backup, lockSettings },
    }),
    plan: lazyScreen(async () => (await import('../screens/plan/PlanScreen')).PlanScreen, NotLoaded, {
      writing,
      clinic,
    }),
    mirror: lazyScreen(async () => (await import('../screens/mirror/MirrorScreen')).MirrorScreen, NotLoaded, {
      mirror,
    }),
  };
}

function CurrentScreen({ screens }: { screens: ReturnType<typeof createScreens> }) {
  const screen = useAppState((state) => state.screen);
  const Screen = screens[screen];
  useLayoutEffect(() => {
    scrollTo(0, 0);
  }, [screen]);
  // With its key, the screen that is left goes at once, and does not wait out of sight for the next one's code.
  return (
    <Suspense key={screen} fallback={<OpeningScreen />}>
      <Screen />
    </Suspense>
  );
}

openPage().catch((error: unknown) => {
  root.render(<NotLoaded />);
  throw error;
});
