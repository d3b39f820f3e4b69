import { useEffect } from 'react';
import { usePatientLanguageState } from '#shell/language/languageContext';
import { useHome, useHomeState } from '../homeContext';
import type { HomeStep } from '../store/homeState';
import { AfterPage } from './AfterPage';
import { BeginPage } from './BeginPage';
import { CameraPage } from './CameraPage';
import { CheckPage } from './CheckPage';
import { FilmScreen } from './FilmScreen';
import { LastTimePage } from './LastTimePage';
import { PainPage } from './PainPage';
import { PastPage } from './PastPage';
import { PlanPage } from './PlanPage';
import { SendPage } from './SendPage';
import { SummaryPage } from './SummaryPage';
import './home.css';

const pages: Record<HomeStep, () => React.ReactNode> = {
  plan: BeginPage,
  past: PastPage,
  send: SendPage,
  'last-time': LastTimePage,
  overview: PlanPage,
  check: CheckPage,
  'pain-before': PainPage,
  camera: CameraPage,
  exercise: FilmScreen,
  after: AfterPage,
  summary: SummaryPage,
};

/** A home session from its plan to its summary, one page per step. */
export function HomeScreen() {
  const home = useHome();
  const Page = pages[useHomeState(({ step }) => step)];
  useEffect(() => void home.enter(), [home]);
  // Every word of a page is in one language.
  return <Page key={usePatientLanguageState(({ language }) => language)} />;
}
