import { StrictMode, useLayoutEffect } from 'react';
import { createRoot } from 'react-dom/client';
import '@fontsource/atkinson-hyperlegible/latin-400.css';
import '@fontsource/atkinson-hyperlegible/latin-700.css';
import './theme.css';
import './controls.css';
import { carriesPlan } from '../handover/planLink';
import { openFrameSource } from '../frames/openFrameSource';
import { createPoseTracker } from '../pose/createPoseTracker';
import { poseWeights } from '../pose/poseWeights';
import { HomeScreen } from '../screens/home/HomeScreen';
import { InboxScreen } from '../screens/inbox/InboxScreen';
import { LockScreen } from '../screens/lock/LockScreen';
import { MirrorScreen } from '../screens/mirror/MirrorScreen';
import { PlanScreen } from '../screens/plan/PlanScreen';
import { ReviewScreen } from '../screens/review/ReviewScreen';
import { StartScreen } from '../screens/start/StartScreen';
import { TrackingScreen } from '../screens/tracking/TrackingScreen';
import { openRepository } from '../storage/openRepository';
import { createBackup } from './backup/createBackup';
import { browserReviewer } from './review/browserReviewer';
import { createApp } from './createApp';
import { fetchExample } from './fetchExample';
import { browserWorld } from './home/browserWorld';
import { createHome } from './home/createHome';
import { browserInbox } from './inbox/browserInbox';
import { createInbox } from './inbox/createInbox';
import { createGate } from './lock/createGate';
import { createLockSettings } from './lock/createLockSettings';
import { earlierNotes, openNotes } from './notes';
import { browserOffline } from './offline/browserOffline';
import { createOffline } from './offline/createOffline';
import { browserMirror } from './mirror/browserMirror';
import { createMirror } from './mirror/createMirror';
import { openOnce } from './openOnce';
import { browserPlanWriting } from './planWriting/browserPlanWriting';
import { createPlanWriting } from './planWriting/createPlanWriting';
import { PageProvider, useAppState } from './PageContext';
import { saveBlob } from './saveBlob';
import { saveFile } from './saveFile';
import { browserClinic, browserSending } from './sending/browserSending';
import { createClinic } from './sending/createClinic';
import { createSending } from './sending/createSending';

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
const home = createHome(browserWorld(baseUrl, app, openRepositoryOnce));
const writing = createPlanWriting(browserPlanWriting(notes, openRepositoryOnce));
const inbox = createInbox(
  browserInbox({
    app,
    openRepository: openRepositoryOnce,
    measureWaiting: () => void home.enter(),
    forgetPatient: (patient) => writing.forget(patient),
  }),
);
// A plan that came with the link opens at once, and does not stay in the address, where others could read it.
const openLink = () => {
  const { hash, pathname, search } = location;
  if (!carriesPlan(hash)) return;
  history.replaceState(null, '', pathname + search);
  app.show('home');
  void home.openPlanLink(hash);
};
openLink();
addEventListener('hashchange', openLink);

const offline = createOffline(browserOffline());
const clinic = createClinic(
  browserClinic(openRepositoryOnce, notes, () => {
    if (app.store.getState().screen === 'inbox') void inbox.enter();
  }),
);
const backup = createBackup({
  openRepository: openRepositoryOnce,
  saveBlob,
  now: () => new Date(),
  onRestored() {
    void clinic.lookAnew();
    void inbox.enter();
  },
});
const sending = createSending(browserSending(openRepositoryOnce));
const lockSettings = createLockSettings({
  openRepository: openRepositoryOnce,
  reload: () => location.reload(),
});
const mirror = createMirror(browserMirror(baseUrl));

const screens = {
  start: StartScreen,
  tracking: TrackingScreen,
  review: ReviewScreen,
  home: HomeScreen,
  inbox: InboxScreen,
  plan: PlanScreen,
  mirror: MirrorScreen,
};

function CurrentScreen() {
  const screen = useAppState((state) => state.screen);
  const Screen = screens[screen];
  useLayoutEffect(() => {
    scrollTo(0, 0);
  }, [screen]);
  return <Screen />;
}

const page = { app, home, inbox, writing, clinic, sending, mirror, backup, lockSettings, offline };
root.render(
  <StrictMode>
    <PageProvider page={page}>
      <CurrentScreen />
    </PageProvider>
  </StrictMode>,
);
