import type { PlanDocument } from '#documents/plan/planDocument';
import { useHome, useHomeStep } from '../homeContext';
import { kneesNotAsked } from '../store/kneesNotAsked';
import { painQuestion, PainScales } from './PainScales';

/** How much it hurts now: the number begins the session. */
export function TodayPain({ plan }: { plan: PlanDocument }) {
  const home = useHome();
  const painToday = useHomeStep('plan', (part) => part.painToday);
  const said = { ...painToday, painBySide: painToday.painBySide ?? kneesNotAsked(plan.items) };
  return (
    <section className="home-section" aria-labelledby="pain-title">
      <h2 id="pain-title">{painQuestion(said)}</h2>
      <PainScales said={said} leadsOn onChange={(score, side) => void home.sayPainToday(score, side)} />
    </section>
  );
}
