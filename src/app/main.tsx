import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import '@fontsource/atkinson-hyperlegible/latin-400.css';
import '@fontsource/atkinson-hyperlegible/latin-700.css';
import './theme.css';
import './controls.css';
import { openFrameSource } from '../frames/openFrameSource';
import { createPoseTracker } from '../pose/createPoseTracker';
import { poseWeights } from '../pose/poseWeights';
import { HomeScreen } from '../screens/home/HomeScreen';
import { ReviewScreen } from '../screens/review/ReviewScreen';
import { StartScreen } from '../screens/start/StartScreen';
import { TrackingScreen } from '../screens/tracking/TrackingScreen';
import { AppProvider, useAppState } from './AppContext';
import { createApp } from './createApp';
import { fetchExample } from './fetchExample';
import { HomeProvider } from './home/HomeContext';
import { browserWorld } from './home/browserWorld';
import { createHome } from './home/createHome';
import { saveFile } from './saveFile';

const baseUrl = new URL('./', location.href).href;

const app = createApp({
  openFrameSource,
  createTracker: () => createPoseTracker(baseUrl),
  fetchExample: () => fetchExample(`${baseUrl}example/`),
  saveFile,
  weights: poseWeights,
  newId: () => crypto.randomUUID(),
  now: () => new Date(),
});

const home = createHome(browserWorld(baseUrl, app));

const screens = { start: StartScreen, tracking: TrackingScreen, review: ReviewScreen, home: HomeScreen };

function CurrentScreen() {
  const Screen = screens[useAppState(({ screen }) => screen)];
  return <Screen />;
}

createRoot(document.getElementById('app')!).render(
  <StrictMode>
    <AppProvider app={app}>
      <HomeProvider home={home}>
        <CurrentScreen />
      </HomeProvider>
    </AppProvider>
  </StrictMode>,
);
