import { useEffect, useRef, type ReactNode } from 'react';
import { Button, Label, ProgressBar, RadioButton, RadioField, RadioGroup } from 'react-aria-components';
import { videoParts, type VideoPart } from '#documents/parcel/videoPart';
import { useSending, useSendingState } from '#features/sharing/sendingContext';
import type { SendingChoice } from '#features/sharing/store/createSending';
import { KeyWords } from '#ui/components/KeyWords';
import { Message } from '#ui/components/Message';
import { Parts } from '#ui/components/Parts';
import { ProgressFill } from '#ui/components/ProgressFill';
import { clockWords } from '#words/dateWords';
import { megabytes } from '#words/megabytes';
import { message, messageParts } from '#words/messages/message';
import { useHomeState } from '../homeContext';
import { HomePage } from './HomePage';

interface Props {
  sessionId: string;
  /** The public keys that the plan carries. */
  recipients: readonly string[];
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
  const { sessionId, recipients, wish, hasSets, children, onBack, onDone } = props;
  const sending = useSending();
  const isMeasuring = useHomeState(({ background }) => background.waiting > 0);
  const { state, chosen, ...sent } = useSendingState((all) => all);
  const isSent = sent.sessionId === sessionId && (state === 'shared' || state === 'saved');
  useEffect(() => {
    if (!isSent) void sending.look(sessionId, wish);
  }, [sessionId, wish, isMeasuring, isSent, sending]);

  if (isSent) {
    return (
      <HomePage
        title={message(state === 'shared' ? 'send.sent' : 'send.saved')}
        back={onBack}
        actions={
          <>
            <Button className="button button-primary" onPress={onDone}>
              {message('send.done')}
            </Button>
            <Button className="button" onPress={() => sending.sendAgain()}>
              {message('send.once-more')}
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
      title={message('send.title')}
      back={onBack}
      actions={
        <>
          <Button
            className="button button-primary"
            isDisabled={chosen === null || isBusy}
            onPress={() => void sending.send(sessionId, recipients)}
          >
            {message(state === 'sealing' ? 'send.sealing' : 'send.send')}
          </Button>
          <Button className="button" onPress={onDone}>
            {message('send.not-now')}
          </Button>
        </>
      }
    >
      {children}
      <p>{message(hasSets ? 'send.only-therapist' : 'send.only-therapist-answer')}</p>
      {hasSets && <PartChoice sessionId={sessionId} wish={wish} />}
      <Preparing />
      {isMeasuring && <p className="soft">{message('send.still-measuring')}</p>}
      <p role="status">{state === 'idle' ? sent.sentence : null}</p>
      {state === 'failed' && (
        <Message kind="problem" title={message('send.failed')}>
          {message('send.kept', { sentence: sent.sentence ?? '' })}
        </Message>
      )}
      <Protection recipients={recipients} senderKey={sent.senderKey} />
    </HomePage>
  );
}

function Sent({ how, at }: { how: 'shared' | 'saved'; at: string }) {
  return how === 'shared' ? (
    <p className="flag-advice">{message('send.sent-at', { time: clockWords(at) })}</p>
  ) : (
    <>
      <p className="flag-advice">{message('send.saved-at', { time: clockWords(at) })}</p>
      <p>{message('send.downloads')}</p>
    </>
  );
}

/** How the file is sealed, and the words by which two people can compare its keys. */
function Protection({ recipients, senderKey }: Pick<Props, 'recipients'> & { senderKey: string | null }) {
  return (
    <details className="protection">
      <summary>{message('send.protection')}</summary>
      <p>
        <Parts
          of={messageParts('send.sealed', { count: recipients.length, words: <KeyWords of={recipients} /> })}
        />
      </p>
      {senderKey !== null && (
        <p>
          <Parts of={messageParts('send.signed', { words: <KeyWords of={senderKey} /> })} />
        </p>
      )}
    </details>
  );
}

/** How much of the video is sent, with its size; an impossible choice says why. */
function PartChoice({ sessionId, wish }: Pick<Props, 'sessionId' | 'wish'>) {
  const sending = useSending();
  const { state, chosen, choices, outOfLine } = useSendingState((all) => all);
  const hintOf = (part: VideoPart) =>
    part === 'out-of-line'
      ? message('send.part.out-of-line.hint', outOfLine)
      : message(`send.part.${part}.hint`);
  return (
    <RadioGroup
      className="field"
      value={chosen}
      isDisabled={choices === null || state === 'sealing'}
      onChange={(part) => void sending.choose(sessionId, part as VideoPart)}
    >
      <Label className="field-label">{message('send.how-much')}</Label>
      {wish !== null && (
        <p className="small">{message('send.wish', { part: message(`send.part.${wish}`) })}</p>
      )}
      {videoParts.map((part) => {
        const choice = choices?.[part];
        const isPossible = choice !== undefined && choice.fault === null;
        return (
          <RadioField key={part} value={part} isDisabled={!isPossible}>
            <RadioButton className="side-option part-option">
              <span>
                <PartName part={part} choice={isPossible ? choice : undefined} />
                <span className="small soft part-hint">{choice?.fault ?? hintOf(part)}</span>
              </span>
            </RadioButton>
          </RadioField>
        );
      })}
    </RadioGroup>
  );
}

/** With its size, where it is known. */
function PartName({ part, choice }: { part: VideoPart; choice: SendingChoice | undefined }) {
  const name = <span className="part-name">{message(`send.part.${part}`)}</span>;
  if (choice === undefined) return name;
  return <Parts of={messageParts('send.part.size', { part: name, size: sizeWords(choice) })} />;
}

function sizeWords({ bytes, isExact }: SendingChoice): string {
  return isExact ? megabytes(bytes) : message('send.about', { size: megabytes(bytes) });
}

/** Progress of the preparation, with a stop button; then the result. */
function Preparing() {
  const sending = useSending();
  const progress = useSendingState((state) => state.progress);
  const ready = useSendingState((state) => state.ready);
  if (ready !== null) {
    return (
      <div className="home-section">
        <p>{message('send.ready')}</p>
        {ready.map((video, index) => (
          <ReadyVideo key={index} video={video} number={index + 1} />
        ))}
      </div>
    );
  }
  if (progress === null) return null;
  return (
    <div className="home-section">
      <ProgressBar value={100 * progress} aria-label={message('send.preparing')}>
        {({ percentage, valueText }) => (
          <>
            <p>{message('send.preparing-share', { share: valueText ?? '' })}</p>
            <ProgressFill percentage={percentage} />
          </>
        )}
      </ProgressBar>
      <Button className="button" onPress={() => sending.stopPreparing()}>
        {message('send.stop')}
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
      aria-label={message('send.video', { number })}
    />
  );
}
