import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import { useHome, useHomeState } from '../../app/home/HomeContext';
import { useSending, useSendingState } from '../../app/sending/SendingContext';
import { Message } from '../../components/Message';
import { megabytes } from '../../words/megabytes';

/** Sends the saved session back to the therapist whose key the plan carries; how much it is stands there before. */
export function SendBack({ recipient }: { recipient: string }) {
  const home = useHome();
  const sending = useSending();
  const isSaved = useHomeState(({ saving }) => saving === 'saved');
  const isFinishing = useHomeState(({ sets }) => sets.some(({ keeping }) => keeping === 'finishing'));
  const isMeasuring = useHomeState(({ background }) => background.waiting > 0);
  const { state, sizes, sentence } = useSendingState((all) => all);
  const [withVideo, setWithVideo] = useState<boolean | null>(null);
  const isReady = isSaved && !isFinishing;
  useEffect(() => {
    if (isReady) void sending.look(home.visitId());
  }, [isReady, isMeasuring, sending, home]);
  if (!isReady) return null;

  const choice = (value: boolean, words: string, bytes: number | undefined) => (
    <Button
      className={withVideo === value ? 'button button-primary' : 'button'}
      aria-pressed={withVideo === value}
      onPress={() => setWithVideo(value)}
    >
      {words}
      {bytes !== undefined && `, ${megabytes(bytes)}`}
    </Button>
  );
  return (
    <section className="card home-section" aria-labelledby="send-title">
      <h2 id="send-title">Send it to your therapist</h2>
      <p>
        It goes as one sealed file that only your therapist can open. Without the video they see how your knee
        moved; with it they see you as well. You decide.
      </p>
      <div className="home-row">
        {choice(false, 'Without the video', sizes?.withoutVideo)}
        {choice(true, 'With the video', sizes?.withVideo)}
      </div>
      {isMeasuring && (
        <p className="soft">
          The careful measuring is not done yet; what you send now has the first numbers.
        </p>
      )}
      <Button
        className="button button-primary"
        isDisabled={withVideo === null || state === 'sealing'}
        onPress={() => void sending.send(home.visitId(), recipient, withVideo === true)}
      >
        {state === 'sealing' ? 'Sealing …' : 'Send'}
      </Button>
      <div role="status">
        {state === 'shared' && <p>It was handed to the program that you chose.</p>}
        {state === 'saved' && (
          <p>It was saved as a file among your downloads. Send that file to your therapist as you agreed.</p>
        )}
      </div>
      {state === 'failed' && (
        <Message kind="problem" title="Not sent">
          {sentence}
        </Message>
      )}
    </section>
  );
}
