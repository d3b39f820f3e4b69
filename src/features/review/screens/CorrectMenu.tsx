import { useState } from 'react';
import { Button, Menu, MenuItem, MenuTrigger, Popover } from 'react-aria-components';
import { longestReason } from '#documents/recording/correctionSchema';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { AskText } from '#ui/components/AskText';
import { useReview } from '../reviewContext';
import { correctionChoices, middleMs } from './correctionChoices';
import type { Playhead } from './playhead';

/** Why a repetition most often does not count. */
const excludeReasons = ['Lost balance', 'Practice repetition', 'Broken off'] as const;

interface Props {
  recording: ShownRecording;
  index: number;
  playhead: Playhead;
}

/** Corrects a repetition where the computer was wrong. */
export function CorrectMenu({ recording, index, playhead }: Props) {
  const review = useReview();
  const [isAsking, setAsking] = useState(false);
  /** Position of the video when the menu was opened. */
  const [videoMs, setVideoMs] = useState(0);
  const { measurement, excluded, isMirrored } = recording;
  const isExcluded = excluded[index] !== null && excluded[index] !== undefined;
  const { number } = measurement.repetitions[index] ?? { number: 0 };
  return (
    <>
      <MenuTrigger onOpenChange={(isOpen) => isOpen && setVideoMs(playhead.state().timeMs)}>
        <Button className="button no-print">
          Correct <span aria-hidden="true">▾</span>
        </Button>
        <Popover className="popover">
          <Menu aria-label={`Correct repetition ${number}`}>
            {!isExcluded && (
              <MenuItem
                className="option"
                textValue="Exclude this repetition"
                onAction={() => setAsking(true)}
              >
                Exclude this repetition …
                <span className="soft">It stays in the table but does not count</span>
              </MenuItem>
            )}
            {correctionChoices(measurement, isExcluded, index, videoMs).map(({ id, name, hint, change }) => (
              <MenuItem
                key={id}
                id={id}
                className="option"
                textValue={name}
                onAction={() => review.correct(change)}
              >
                {name}
                <span className="soft">{hint}</span>
              </MenuItem>
            ))}
            <MenuItem
              className="option"
              textValue="The video is mirrored"
              onAction={() => review.correct({ kind: 'mirrored', isMirrored: !isMirrored })}
            >
              {isMirrored ? 'The video is not mirrored' : 'The video is mirrored'}
              <span className="soft">
                Some front cameras store left for right; applies to the whole recording
              </span>
            </MenuItem>
          </Menu>
        </Popover>
      </MenuTrigger>
      <AskText
        isOpen={isAsking}
        onOpenChange={setAsking}
        title={`Exclude repetition ${number}?`}
        label="Reason"
        hint="In your own words, or one of these:"
        ready={excludeReasons}
        answer="Exclude"
        maxLength={longestReason}
        onAnswer={(reason) => review.correct({ kind: 'exclude', atMs: middleMs(measurement, index), reason })}
      />
    </>
  );
}
