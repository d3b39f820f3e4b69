import { momentWords } from '#words/dateWords';
import { message } from '#words/messages/message';
import { useHome, useHomeState, useHomeStep } from '../homeContext';
import { SendBack } from './SendBack';

/** Sends a session that was kept earlier. */
export function SendPage() {
  const home = useHome();
  const session = useHomeStep('send', (part) => part.session);
  const wish = useHomeState(
    ({ plans }) => plans?.find(({ id }) => id === session?.planId)?.videoWish ?? null,
  );
  if (session === null) return null;
  const { id, startedAt, isFilmed, isAnswer, recipients } = session;
  const back = () => home.back();
  return (
    <SendBack
      sessionId={id}
      recipients={recipients}
      wish={wish}
      hasSets={isFilmed}
      onBack={back}
      onDone={back}
    >
      <p>{message(isAnswer ? 'send.answer-of' : 'send.session-of', { moment: momentWords(startedAt) })}</p>
    </SendBack>
  );
}
