import { useEffect, useRef, type ReactNode } from 'react';
import { Button, Label, ProgressBar, RadioButton, RadioField, RadioGroup } from 'react-aria-components';
import { videoParts, type VideoPart } from '#documents/parcel/videoPart';
import { useSending, useSendingState } from '#features/sharing/sendingContext';
import type { SendingChoice } from '#features/sharing/store/createSending';
import { KeyWords } from '#ui/components/KeyWords';
import { Message } from '#ui/components/Message';
import { ProgressFill } from '#ui/components/ProgressFill';
import { clockWords } from '#words/dateWords';
import { megabytes } from '#words/megabytes';
import { useHomeState } from '../homeContext';
import { HomePage } from './HomePage';

interface Props {
  sessionId: string;
  /** The therapist's public key, from the plan. */
  recipient: string;
  /** How much of the video the therapist would like, as the plan says. */
  wish: VideoPart | null;
  /** Whether any set was recorded, so that there may be videos to choose from. */
  hasSets: boolean;
  /** Which session it is, where it is not today's. */
  children?: ReactNode;
  onBack: () => void;
  /** Once it is sent, or is not to be sent now. */
  onDone: () => void;
}

/** Sends a saved session back to the therapist: how much of the video, and one button. */
export function SendBack(props: Props) {
  const { sessionId, recipient, wish, hasSets, children, onBack, onDone } = props;
  const sending = useSending();
  const isMeasuring = useHomeState(({ background }) => background.waiting > 0);
  const { state, chosen, ...sent } = useSendingState((all) => all);
  const isSent = sent.sessionId === sessionId && (state === 'shared' || state === 'saved');
  useEffect(() => {
    if (!isSent) void sending.look(sessionId, wish);
  }, [sessionId, wish, isMeasuring, isSent, sending]);
  const leave = { words: 'Back', onPress: onBack };

  if (isSent) {
    return (
      <HomePage
        title={state === 'shared' ? 'Sent' : 'Saved as a file'}
        leave={leave}
        actions={
          <>
            <Button className="button button-primary" onPress={onDone}>
              Done
            </Button>
            <Button className="button" onPress={() => sending.sendAgain()}>
              Send it once more
            </Button>
          </>
        }
      >
        {children}
        {sent.sentAt !== null && <Sent how={state} at={sent.sentAt} />}
      </HomePage>
    );
  }
  const isBusy = state === 'preparing' || state === 'sealing';
  return (
    <HomePage
      title="Send it to your therapist"
      leave={leave}
      actions={
        <>
          <Button
            className="button button-primary"
            isDisabled={chosen === null || isBusy}
            onPress={() => void sending.send(sessionId, recipient)}
          >
            {state === 'sealing' ? 'Sealing …' : 'Send'}
          </Button>
          <Button className="button" onPress={onDone}>
            Not now
          </Button>
        </>
      }
    >
      {children}
      <p>
        Only your therapist can open it.{' '}
        {hasSets ? 'It always shows how your knee moved.' : 'It holds what you did and said.'}
      </p>
      {hasSets && <PartChoice sessionId={sessionId} wish={wish} />}
      <Preparing />
      {isMeasuring && (
        <p className="soft">Your video is still being measured. Now the first result is sent.</p>
      )}
      <p role="status">{state === 'idle' ? sent.sentence : null}</p>
      {state === 'failed' && (
        <Message kind="problem" title="Not sent">
          {sent.sentence} Your session is kept as it is.
        </Message>
      )}
      <Protection recipient={recipient} senderKey={sent.senderKey} />
    </HomePage>
  );
}

function Sent({ how, at }: { how: 'shared' | 'saved'; at: string }) {
  return how === 'shared' ? (
    <p className="flag-advice">Sent at {clockWords(at)}, with the app that you chose.</p>
  ) : (
    <>
      <p className="flag-advice">Saved as a file at {clockWords(at)}.</p>
      <p>It is among your downloads. Send that file to your therapist as you agreed.</p>
    </>
  );
}

/** How the file is sealed, and the words by which two people can compare its keys. */
function Protection({ recipient, senderKey }: { recipient: string; senderKey: string | null }) {
  return (
    <details className="protection">
      <summary>How it is protected</summary>
      <p>
        It is one sealed file, whose name ends in .age. The words of your therapist’s key are{' '}
        <KeyWords of={recipient} />. They are the same on the sheet that you were given.
      </p>
      {senderKey !== null && (
        <p>
          It is signed by this device, whose words are <KeyWords of={senderKey} />. Your therapist sees them
          too.
        </p>
      )}
    </details>
  );
}

const partNames: Record<VideoPart, string> = {
  none: 'No video',
  'out-of-line': 'Only the repetitions out of line',
  'without-head': 'The video without your head',
  whole: 'The whole video',
};

/** How much of the video is sent, with its size; an impossible choice says why. */
function PartChoice({ sessionId, wish }: Pick<Props, 'sessionId' | 'wish'>) {
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
      onChange={(part) => void sending.choose(sessionId, part as VideoPart)}
    >
      <Label className="field-label">How much of the video?</Label>
      {wish !== null && <p className="small">Your therapist would like: {partNames[wish]}. You decide.</p>}
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
