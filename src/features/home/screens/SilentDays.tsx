import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { PlanDocument } from '#documents/plan/planDocument';
import { silenceReasons, type SilenceReason } from '#documents/session/sessionDocument';
import { useHome, useHomeState } from '../homeContext';

const answers: Record<SilenceReason, string> = {
  hurts: 'It hurts',
  'no-time': 'I had no time',
  away: 'I was ill or away',
  trouble: 'The camera or the phone gave me trouble',
  unfilmed: 'I did them without filming',
};

const thanks: Record<SilenceReason, string> = {
  hurts: 'Tell your therapist before you exercise again.',
  'no-time': 'Your plan is here whenever you are ready.',
  away: 'If you were ill, ask your therapist how to start again.',
  trouble: 'You can also exercise without filming: press ‘Done without filming’ afterwards.',
  unfilmed: 'Next time, press ‘Done without filming’ afterwards, and it is kept.',
};

/** After days without a session: one question, answered or closed once. */
export function SilentDays({ plan }: { plan: PlanDocument }) {
  const home = useHome();
  const isAsked = useHomeState(({ today }) => today.silentSince !== null);
  const [said, setSaid] = useState<SilenceReason | null>(null);
  if (!isAsked) {
    return said === null ? null : (
      <p role="status" className="card">
        Thank you, it is kept. {thanks[said]}
        {plan.returnKey !== null && ' You can send your answer from this page.'}
      </p>
    );
  }
  const answer = (reason: SilenceReason) => {
    setSaid(reason);
    void home.answerSilence(plan.id, reason);
  };
  return (
    <section className="card home-section" aria-labelledby="silent-title">
      <h2 id="silent-title">Good to see you again. What got in the way?</h2>
      {silenceReasons.map((reason) => (
        <Button key={reason} className="button flag-button" onPress={() => answer(reason)}>
          {answers[reason]}
        </Button>
      ))}
      <Button className="button button-quiet" onPress={() => void home.closeSilence()}>
        Rather not say
      </Button>
    </section>
  );
}
