import { useState } from 'react';
import { Button, Label, TextArea, TextField } from 'react-aria-components';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useReview, useReviewState } from '../reviewContext';
import { middleMs } from './correctionChoices';
import { Signed } from './CorrectionsPanel';
import { useSaveWhileTyping } from './useSaveWhileTyping';

/** A remark's longest text, characters. */
const longest = 2000;

interface Props {
  recording: ShownRecording;
  selected: number | null;
}

/** Remarks on the set and on the selected repetition, and whether the set has been reviewed. */
export function Remarks({ recording, selected }: Props) {
  const review = useReview();
  const { remarks, reviewed } = useReviewState((state) => state.entries);
  const { measurement } = recording;
  const shown = selected === null ? undefined : measurement.repetitions[selected];
  const { timesMs } = measurement;
  const own =
    shown === undefined
      ? undefined
      : remarks.find(
          ({ atMs }) =>
            atMs !== null && atMs >= timesMs[shown.loadedFrom]! && atMs <= timesMs[shown.loadedTo]!,
        );
  const ofSet = remarks.find(({ atMs }) => atMs === null);
  return (
    <div className="remarks">
      {shown !== undefined && selected !== null && (
        <RemarkField
          key={`repetition ${shown.number}`}
          label={`On repetition ${shown.number}`}
          remark={own}
          onSave={(text) => review.setRemark(own?.atMs ?? middleMs(measurement, selected), text)}
        />
      )}
      <RemarkField
        key="set"
        label="On the set"
        remark={ofSet}
        onSave={(text) => review.setRemark(null, text)}
      />
      <div className="remarks-reviewed">
        <Button className="button" onPress={() => review.markReviewed(reviewed === null)}>
          {reviewed === null ? 'Mark as reviewed' : 'Mark as not reviewed'}
        </Button>
        {reviewed !== null && (
          <span>
            Reviewed: <Signed {...reviewed} />
          </span>
        )}
      </div>
    </div>
  );
}

interface FieldProps {
  label: string;
  remark: { text: string; by: string; at: string } | undefined;
  onSave: (text: string) => void;
}

/** Saved while it is typed. */
function RemarkField({ label, remark, onSave }: FieldProps) {
  const [text, setText] = useState(remark?.text ?? '');
  const save = () => {
    if (text.trim() !== (remark?.text ?? '')) onSave(text);
  };
  const { typed, left } = useSaveWhileTyping(save);
  const change = (next: string) => {
    setText(next);
    typed();
  };
  return (
    <TextField className="field" value={text} onChange={change} onBlur={left} maxLength={longest}>
      <Label className="field-label">
        {label} {remark !== undefined && <Signed by={remark.by} at={remark.at} />}
      </Label>
      <TextArea className="text-input" rows={2} />
    </TextField>
  );
}
