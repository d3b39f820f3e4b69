import { useEffect, useRef } from 'react';
import { Button, Label, ProgressBar, RadioButton, RadioField, RadioGroup } from 'react-aria-components';
import { videoParts, type VideoPart } from '#documents/parcel/videoPart';
import { useSending, useSendingState } from '#features/sharing/sendingContext';
import type { SendingChoice } from '#features/sharing/store/createSending';
import { Message } from '#ui/components/Message';
import { ProgressFill } from '#ui/components/ProgressFill';
import { megabytes } from '#words/megabytes';
import { useHome, useHomeState, useHomeStep } from '../homeContext';

/** Sends the saved session back to the therapist whose key the plan carries; the size is shown first. */
export function SendBack({ recipient }: { recipient: string }) {
  const home = useHome();
  const sending = useSending();
  const isSaved = useHomeStep('summary', ({ saving }) => saving === 'saved');
  const isFinishing = useHomeState(({ sets }) => sets.some(({ keeping }) => keeping === 'finishing'));
  const isMeasuring = useHomeState(({ background }) => background.waiting > 0);
  const { state, chosen, sentence } = useSendingState((all) => all);
  const isReady = isSaved && !isFinishing;
  useEffect(() => {
    if (isReady) void sending.look(home.sessionId());
  }, [isReady, isMeasuring, sending, home]);
  if (!isReady) return null;

  return (
    <section className="card home-section" aria-labelledby="send-title">
      <h2 id="send-title">Send it to your therapist</h2>
      <p>
        It is sent as one sealed file that only your therapist can open. It always shows how your knee moved;
        you decide how much of the video to include.
      </p>
      <PartChoice />
      <Preparing />
      {isMeasuring && (
        <p className="soft">
          The careful measurement is not finished yet. If you send now, the first results are sent.
        </p>
      )}
      <Button
        className="button button-primary"
        isDisabled={chosen === null || state === 'preparing' || state === 'sealing'}
        onPress={() => void sending.send(home.sessionId(), recipient)}
      >
        {state === 'sealing' ? 'Sealing …' : 'Send'}
      </Button>
      <div role="status">
        {state === 'shared' && <p>It was passed to the app that you chose.</p>}
        {state === 'saved' && (
          <p>It was saved as a file among your downloads. Send that file to your therapist as you agreed.</p>
        )}
        {state === 'idle' && sentence !== null && <p>{sentence}</p>}
      </div>
      {state === 'failed' && (
        <Message kind="problem" title="Not sent">
          {sentence} Your session is kept as it is.
        </Message>
      )}
    </section>
  );
}

const partNames: Record<VideoPart, string> = {
  none: 'No video',
  'out-of-line': 'Only the repetitions out of line',
  'without-head': 'The video without your head',
  whole: 'The whole video',
};

/** How much of the video is sent, with its size; an impossible choice says why. */
function PartChoice() {
  const home = useHome();
  const sending = useSending();
  const { state, chosen, choices, outOfLine } = useSendingState((all) => all);
  const hints: Record<VideoPart, string> = {
    none: 'Your therapist does not see you.',
    'out-of-line': `${outOfLine.count} of ${outOfLine.of} repetitions are shown; the rest is black.`,
    'without-head':
      'Black from the top down to your shoulders. Other people, and mirrors, stay in the picture.',
    whole: 'Your therapist sees you and the room.',
  };
  return (
    <RadioGroup
      className="field"
      value={chosen}
      isDisabled={choices === null || state === 'sealing'}
      onChange={(part) => void sending.choose(home.sessionId(), part as VideoPart)}
    >
      <Label className="field-label">How much of the video?</Label>
      {videoParts.map((part) => {
        const choice = choices?.[part];
        const isPossible = choice !== undefined && choice.fault === null;
        return (
          <RadioField key={part} value={part} isDisabled={!isPossible}>
            <RadioButton className="side-option part-option">
              <span>
                <span className="part-name">{partNames[part]}</span>
                {choice !== undefined && isPossible && `, ${sizeWords(choice)}`}
                <span className="small soft part-hint">{choice?.fault ?? hints[part]}</span>
              </span>
            </RadioButton>
          </RadioField>
        );
      })}
    </RadioGroup>
  );
}

function sizeWords({ bytes, isExact }: SendingChoice): string {
  return isExact ? megabytes(bytes) : `about ${megabytes(bytes)}`;
}

/** Progress of the preparation, with a stop button; then the result. */
function Preparing() {
  const sending = useSending();
  const progress = useSendingState((state) => state.progress);
  const ready = useSendingState((state) => state.ready);
  if (ready !== null) {
    return (
      <div className="home-section">
        <p>It is ready on this device, and nothing has left it yet. Watch it before you send it.</p>
        {ready.map((video, index) => (
          <ReadyVideo key={index} video={video} number={index + 1} />
        ))}
      </div>
    );
  }
  if (progress === null) return null;
  return (
    <div className="home-section">
      <ProgressBar value={100 * progress} aria-label="Preparing the video">
        {({ percentage, valueText }) => (
          <>
            <p>Preparing the video on this device … {valueText}</p>
            <ProgressFill percentage={percentage} />
          </>
        )}
      </ProgressBar>
      <Button className="button" onPress={() => sending.stopPreparing()}>
        Stop preparing
      </Button>
    </div>
  );
}

/** A video as the therapist will see it. */
function ReadyVideo({ video, number }: { video: Blob; number: number }) {
  const element = useRef<HTMLVideoElement>(null);
  useEffect(() => {
    const shown = element.current;
    if (shown === null) return;
    const url = URL.createObjectURL(video);
    shown.src = url;
    return () => {
      shown.removeAttribute('src');
      URL.revokeObjectURL(url);
    };
  }, [video]);
  return (
    <video
      ref={element}
      className="ready-video"
      controls
      muted
      playsInline
      preload="metadata"
      aria-label={`What is sent of video ${number}`}
    />
  );
}
