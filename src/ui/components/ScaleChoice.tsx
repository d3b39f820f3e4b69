import { Label, RadioButton, RadioField, RadioGroup } from 'react-aria-components';

interface Props {
  question: string;
  /** A score in a few words; empty where there is nothing to say. */
  words: (score: number) => string;
  value: number | null;
  onChange: (score: number) => void;
  /** Where it is one question among others. */
  isSmall?: boolean;
  /** The question is already shown above it. */
  isQuestionHidden?: boolean;
}

/** Scores with the same words share a row. */
const rows = [[0], [1, 2, 3], [4, 5, 6], [7, 8, 9], [10]];

/** A question answered from 0 to 10, as large targets with words next to them. */
export function ScaleChoice(props: Props) {
  const { question, words, value, onChange, isSmall = false, isQuestionHidden = false } = props;
  return (
    <RadioGroup
      className={isSmall ? 'scale scale-small' : 'scale'}
      value={value === null ? null : String(value)}
      onChange={(score) => onChange(Number(score))}
    >
      <Label className={isQuestionHidden ? 'visually-hidden' : 'scale-label'}>{question}</Label>
      <div className="scale-rows">
        {rows.map((scores) => (
          <div key={scores[0]} className="scale-row" data-count={scores.length}>
            <span className="scale-words" aria-hidden="true">
              {words(scores[0]!)}
            </span>
            <div className="scale-numbers">
              {scores.map((score) => (
                <RadioField
                  key={score}
                  value={String(score)}
                  aria-label={[String(score), words(score)].filter(Boolean).join(', ')}
                >
                  <RadioButton className="scale-number">{score}</RadioButton>
                </RadioField>
              ))}
            </div>
          </div>
        ))}
      </div>
    </RadioGroup>
  );
}
