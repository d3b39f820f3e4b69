import { useState } from 'react';
import { Button, Input, TextField } from 'react-aria-components';
import { findExercise } from '#core/exercises/exercises';
import { useNavigation } from '#shell/navigation/navigationContext';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { useReview, useReviewState } from '../reviewContext';
import { countedRepetitions } from '../rules/countedRepetitions';
import { proposeCues } from '../rules/proposeCues';
import { CompareShow } from './CompareShow';
import { cueOf } from './cueOf';
import { CueShow } from './CueShow';
import { repetitionAt } from './repetitionAt';
import { useSaveWhileTyping } from './useSaveWhileTyping';

/** A cue's longest text, characters, and how many there may be. */
const longest = 120;
const most = 20;

interface Props {
  recording: ShownRecording;
  selected: number;
  onSelect: (index: number) => void;
}

/** Repetitions to show to the patient, each with one cue: proposed or picked, edited, then shown large. */
export function CueList({ recording, selected, onSelect }: Props) {
  const review = useReview();
  const navigation = useNavigation();
  const { cues } = useReviewState((state) => state.entries);
  const judgements = useReviewState((state) => state.judgements);
  const limits = useReviewState((state) => state.limits);
  const [isShowing, setShowing] = useState(false);
  const [isComparing, setComparing] = useState(false);
  const { measurement, excluded } = recording;
  const { task } = measurement.setup;

  const propose = () => {
    const counted = countedRepetitions(measurement, judgements, excluded);
    review.setCues(
      proposeCues(counted, limits).map(({ index, role }) =>
        cueOf(measurement, index, role === 'model' ? null : judgements[index]!),
      ),
    );
  };
  const add = () => review.setCues([...cues, cueOf(measurement, selected, judgements[selected]!)]);
  const change = (index: number, text: string) =>
    review.setCues(cues.map((cue, at) => (at === index ? { ...cue, text } : cue)));
  const numberAt = (atMs: number) => {
    const index = repetitionAt(measurement, atMs);
    return index === null ? null : { index, number: measurement.repetitions[index]!.number };
  };

  return (
    <div className="cue-list">
      <div className="remarks-reviewed">
        <Button className="button" onPress={propose}>
          Propose the most telling
        </Button>
        <Button className="button" isDisabled={cues.length >= most} onPress={add}>
          Add this repetition
        </Button>
        <Button
          className="button button-primary"
          isDisabled={cues.length === 0}
          onPress={() => setShowing(true)}
        >
          Show to the patient
        </Button>
        <Button className="button" onPress={() => setComparing(true)}>
          Compare two
        </Button>
        <Button className="button" onPress={() => void navigation.show('mirror')}>
          Live mirror
        </Button>
      </div>
      {cues.length === 0 && (
        <p className="soft">
          The worst repetition, the usual fault and the best one as a model are proposed; you choose, and put
          the cue in your own words.
        </p>
      )}
      <ol className="cues">
        {cues.map(({ atMs, text }, index) => {
          const place = numberAt(atMs);
          return (
            <li key={`${index} ${atMs}`} className="cue">
              <Button
                className="button button-quiet"
                isDisabled={place === null}
                onPress={() => place !== null && onSelect(place.index)}
              >
                {place === null ? 'no longer there' : `Repetition ${place.number}`}
              </Button>
              <CueField text={text} onSave={(words) => change(index, words)} task={task} />
              <Button
                className="button button-quiet"
                aria-label="Remove from the list"
                onPress={() => review.setCues(cues.filter((_, at) => at !== index))}
              >
                ✕
              </Button>
            </li>
          );
        })}
      </ol>
      {isComparing && (
        <CompareShow recording={recording} selected={selected} onClose={() => setComparing(false)} />
      )}
      {isShowing && <CueShow recording={recording} cues={cues} onClose={() => setShowing(false)} />}
    </div>
  );
}

type FieldProps = { text: string; task: Parameters<typeof findExercise>[0]; onSave: (text: string) => void };

/** Free text, with the library's cues for the task to pick from. */
function CueField({ text, task, onSave }: FieldProps) {
  const [words, setWords] = useState(text);
  const listId = `cues-of-${task}`;
  const isEmpty = words.trim() === '';
  const { typed, left } = useSaveWhileTyping(() => {
    if (!isEmpty && words.trim() !== text) onSave(words.trim());
  });
  return (
    <>
      <TextField
        className="field"
        aria-label="Cue"
        value={words}
        onChange={(next) => {
          setWords(next);
          typed();
        }}
        onBlur={() => {
          left();
          if (isEmpty) setWords(text);
        }}
        maxLength={longest}
      >
        <Input className="text-input" list={listId} />
      </TextField>
      <datalist id={listId}>
        {findExercise(task).faults.map(({ cue }) => (
          <option key={cue} value={cue} />
        ))}
      </datalist>
    </>
  );
}
