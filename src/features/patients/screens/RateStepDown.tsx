import { useId, useState } from 'react';
import { stepDownRating, type StepDownObservation } from '#core/assessments/stepDownRating';
import type { Side } from '#core/protocol/side';
import { stepDownKneeWords, stepDownSeenWords, stepDownSentence } from '#words/assessmentSentences';

const nothingSeen: StepDownObservation = {
  armsUsed: false,
  trunkLeaned: false,
  pelvisLeftLevel: false,
  kneeInward: 'none',
  unsteady: false,
};

/** What is looked for, each worth a point; the knee is asked about apart, since it has two. */
const criteria = [
  { id: 'armsUsed', asks: 'An arm is taken from the waist to keep balance' },
  { id: 'trunkLeaned', asks: 'The trunk leans to a side' },
  { id: 'pelvisLeftLevel', asks: 'The pelvis turns, or one side of it rises' },
  { id: 'unsteady', asks: 'The stance is unsteady, or the other foot bears weight' },
] as const;

const kneeOptions = Object.entries(stepDownKneeWords) as [StepDownObservation['kneeInward'], string][];

interface Props {
  side: Side;
  /** @param seen  what was seen, in words for the record */
  onRate: (points: number, seen: string) => void;
}

/** Rates the five repetitions of one leg by what the eye saw. */
export function RateStepDown({ side, onRate }: Props) {
  const fields = useId();
  const [seen, setSeen] = useState<StepDownObservation | null>(null);
  const rate = (change: Partial<StepDownObservation>) => {
    const next = { ...(seen ?? nothingSeen), ...change };
    setSeen(next);
    onRate(stepDownRating(next).points, stepDownSeenWords(next));
  };
  return (
    <fieldset className="programme-take programme-rate">
      <legend className="small">What was seen over all 5 with the {side} leg</legend>
      {criteria.map(({ id, asks }) => (
        <label key={id} className="small">
          <input
            type="checkbox"
            checked={seen?.[id] ?? false}
            onChange={({ target }) => rate({ [id]: target.checked })}
          />{' '}
          {asks}
        </label>
      ))}
      <label className="small" htmlFor={`${fields}-knee`}>
        The bump below the kneecap, at its most inward
      </label>
      <select
        id={`${fields}-knee`}
        className="text-input"
        value={seen?.kneeInward ?? 'none'}
        onChange={({ target }) => rate({ kneeInward: target.value as StepDownObservation['kneeInward'] })}
      >
        {kneeOptions.map(([id, words]) => (
          <option key={id} value={id}>
            {words} ({stepDownRating({ ...nothingSeen, kneeInward: id }).points})
          </option>
        ))}
      </select>
      <div className="button-row">
        <button type="button" className="button" onClick={() => rate(nothingSeen)}>
          Nothing of this was seen
        </button>
      </div>
      <p className="small" role="status">
        {seen === null ? 'Not rated yet.' : stepDownSentence(stepDownRating(seen))}
      </p>
    </fieldset>
  );
}
