import { StrictMode, useLayoutEffect } from 'react';
import { createRoot } from 'react-dom/client';
import '@fontsource/atkinson-hyperlegible/latin-400.css';
import '@fontsource/atkinson-hyperlegible/latin-700.css';
import '../ui/theme.css';
import '../ui/controls.css';
import { carriesPlan } from '#documents/plan/planLink';
import { openFrameSource } from '#device/frames/openFrameSource';
import { createPoseTracker } from '#device/pose/createPoseTracker';
import { poseWeights } from '#device/pose/poseWeights';
import { HomeScreen } from '#features/home/screens/HomeScreen';
import { SessionsScreen } from '#features/sessions/screens/SessionsScreen';
import { LockScreen } from '#features/lock/screens/LockScreen';
import { MirrorScreen } from '#features/mirror/screens/MirrorScreen';
import { PlanScreen } from '#features/planning/screens/PlanScreen';
import { ReviewScreen } from '#features/review/screens/ReviewScreen';
import { StartScreen } from '#features/start/screens/StartScreen';
import { TrackingScreen } from '#features/review/screens/tracking/TrackingScreen';
import { openRepository } from '#device/storage/openRepository';
import { createBackup } from '#features/sharing/store/backup/createBackup';
import { browserReviewer } from '#features/review/store/browserReviewer';
import { createApp } from '#features/review/store/createApp';
import { createTracking } from '#shell/tracking/createTracking';
import { useTrackingState } from '#shell/tracking/trackingContext';
import { browserHistory } from '#shell/navigation/browserHistory';
import { createNavigation } from '#shell/navigation/createNavigation';
import { useNavigationState } from '#shell/navigation/navigationContext';
import { fetchExample } from '#shell/fetchExample';
import { browserWorld } from '#features/home/store/browserWorld';
import { createHome } from '#features/home/store/createHome';
import { browserKeptSessions } from '#features/sessions/store/browserKeptSessions';
import { createKeptSessions } from '#features/sessions/store/createKeptSessions';
import { createGate } from '#features/lock/store/createGate';
import { createLockSettings } from '#features/lock/store/createLockSettings';
import { earlierNotes, openNotes } from '#shell/notes';
import { browserOffline } from '#features/start/store/browserOffline';
import { createOffline } from '#features/start/store/createOffline';
import { browserMirror } from '#features/mirror/store/browserMirror';
import { createMirror } from '#features/mirror/store/createMirror';
import { openOnce } from '#shell/openOnce';
import { browserPlanWriting } from '#features/planning/store/browserPlanWriting';
import { createPlanWriting } from '#features/planning/store/createPlanWriting';
import { guardLeaving } from './guardLeaving';
import { LeaveDialog } from './LeaveDialog';
import { PageProvider } from './PageProvider';
import { saveBlob } from '#shell/saveBlob';
import { saveFile } from '#shell/saveFile';
import { browserClinic, browserSending } from '#features/sharing/store/browserSending';
import { createClinic } from '#features/sharing/store/createClinic';
import { createSending } from '#features/sharing/store/createSending';

const baseUrl = new URL('./', location.href).href;
const root = createRoot(document.getElementById('app')!);

// What is kept may be locked: nothing else is shown or read before it is open.
const gate = createGate();
gate.store.subscribe(({ state }) => {
  if (state !== 'open') root.render(<LockScreen gate={gate} />);
});
/** One for all of the page: where the device keeps nothing, what is in memory must be the same everywhere. */
const openRepositoryOnce = openOnce(() => openRepository(undefined, (device) => gate.ask(device)));
const notes = await openNotes(openRepositoryOnce, earlierNotes());

/** A review needs a recording, which does not outlast the page. */
let hasRecording = false;
const navigation = createNavigation(browserHistory(), (screen) => screen !== 'review' || hasRecording);
const tracking = createTracking({
  openFrameSource,
  createTracker: () => createPoseTracker(baseUrl),
  weights: poseWeights,
});
const app = createApp({
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
app.store.subscribe(({ recording }) => (hasRecording = recording !== null));
const home = createHome(browserWorld(baseUrl, { app, tracking, navigation }, openRepositoryOnce));
const writing = createPlanWriting(browserPlanWriting(notes, openRepositoryOnce));
const keptSessions = createKeptSessions(
  browserKeptSessions({
    app,
    openRepository: openRepositoryOnce,
    forgetPatient: (patient) => writing.forget(patient),
  }),
);
// A plan that came with the link opens at once, and does not stay in the address, where others could read it.
const openLink = () => {
  const { hash, pathname, search } = location;
  if (!carriesPlan(hash)) return;
  history.replaceState(history.state, '', pathname + search);
  void navigation.show('home').then((isShown) => (isShown ? home.openPlanLink(hash) : undefined));
};
openLink();
addEventListener('hashchange', openLink);

const offline = createOffline(browserOffline());
const clinic = createClinic(browserClinic(openRepositoryOnce, notes));
const backup = createBackup({ openRepository: openRepositoryOnce, saveBlob, now: () => new Date() });
const sending = createSending(browserSending(openRepositoryOnce));
const lockSettings = createLockSettings({
  openRepository: openRepositoryOnce,
  reload: () => location.reload(),
});
const mirror = createMirror(browserMirror(baseUrl));
guardLeaving(navigation, { app, mirror, tracking });
addEventListener('beforeunload', (event) => {
  if (navigation.holdsWork()) event.preventDefault();
});

const screens = {
  start: StartScreen,
  review: ReviewScreen,
  home: HomeScreen,
  sessions: SessionsScreen,
  plan: PlanScreen,
  mirror: MirrorScreen,
};

function CurrentScreen() {
  const isTracking = useTrackingState((state) => state.isTracking);
  const screen = useNavigationState((state) => state.screen);
  const Screen = isTracking ? TrackingScreen : screens[screen];
  useLayoutEffect(() => {
    scrollTo(0, 0);
  }, [screen, isTracking]);
  return (
    <>
      <Screen />
      <LeaveDialog />
    </>
  );
}

const page = {
  navigation,
  tracking,
  app,
  home,
  keptSessions,
  writing,
  clinic,
  sending,
  mirror,
  backup,
  lockSettings,
  offline,
};
root.render(
  <StrictMode>
    <PageProvider page={page}>
      <CurrentScreen />
    </PageProvider>
  </StrictMode>,
);
