import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { PlanDocument } from '#documents/plan/planDocument';
import { silenceReasons, type SilenceReason } from '#documents/session/sessionDocument';
import { message } from '#words/messages/message';
import { useHome, useHomeState } from '../homeContext';

/** After days without a session: one question, answered or closed once. */
export function SilentDays({ plan }: { plan: PlanDocument }) {
  const home = useHome();
  const isAsked = useHomeState(({ today }) => today.silentSince !== null);
  const [said, setSaid] = useState<SilenceReason | null>(null);
  if (!isAsked) {
    return said === null ? null : (
      <p role="status" className="card">
        {message(`silent.thanks.${said}`)}
        {plan.returnKeys.length > 0 && ` ${message('silent.send')}`}
      </p>
    );
  }
  const answer = (reason: SilenceReason) => {
    setSaid(reason);
    void home.answerSilence(plan.id, reason);
  };
  return (
    <section className="card home-section" aria-labelledby="silent-title">
      <h2 id="silent-title">{message('silent.title')}</h2>
      {silenceReasons.map((reason) => (
        <Button key={reason} className="button flag-button" onPress={() => answer(reason)}>
          {message(`silent.${reason}`)}
        </Button>
      ))}
      <Button className="button button-quiet" onPress={() => void home.closeSilence()}>
        {message('silent.not-say')}
      </Button>
    </section>
  );
}
