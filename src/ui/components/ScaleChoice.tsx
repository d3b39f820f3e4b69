import type { ReactNode } from 'react';
import {
  Label,
  RadioButton,
  RadioField,
  RadioGroup,
  ToggleButton,
  ToggleButtonGroup,
} from 'react-aria-components';

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
  /** Whether a number leads on: then arrow keys only move to it, and do not choose it. */
  leadsOn?: boolean;
}

/** Scores with the same words share a row. */
const rows = [[0], [1, 2, 3], [4, 5, 6], [7, 8, 9], [10]];

/** A question answered from 0 to 10, as large targets with words next to them. */
export function ScaleChoice(props: Props) {
  const { question, words, value, onChange, isSmall = false, isQuestionHidden = false } = props;
  const className = isSmall ? 'scale scale-small' : 'scale';
  const nameOf = (score: number) => [String(score), words(score)].filter(Boolean).join(', ');
  if (props.leadsOn === true) {
    return (
      <ToggleButtonGroup
        className={className}
        aria-label={question}
        disallowEmptySelection
        selectedKeys={value === null ? [] : [String(value)]}
        onSelectionChange={([score]) => {
          if (score !== undefined) onChange(Number(score));
        }}
      >
        {!isQuestionHidden && (
          <span className="scale-label" aria-hidden="true">
            {question}
          </span>
        )}
        <Rows words={words}>
          {(score) => (
            <ToggleButton key={score} id={String(score)} className="scale-number" aria-label={nameOf(score)}>
              {score}
            </ToggleButton>
          )}
        </Rows>
      </ToggleButtonGroup>
    );
  }
  return (
    <RadioGroup
      className={className}
      {...(isQuestionHidden ? { 'aria-label': question } : {})}
      value={value === null ? null : String(value)}
      onChange={(score) => onChange(Number(score))}
    >
      {!isQuestionHidden && <Label className="scale-label">{question}</Label>}
      <Rows words={words}>
        {(score) => (
          <RadioField key={score} value={String(score)} aria-label={nameOf(score)}>
            <RadioButton className="scale-number">{score}</RadioButton>
          </RadioField>
        )}
      </Rows>
    </RadioGroup>
  );
}

function Rows({ words, children }: Pick<Props, 'words'> & { children: (score: number) => ReactNode }) {
  return (
    <div className="scale-rows">
      {rows.map((scores) => (
        <div key={scores[0]} className="scale-row" data-count={scores.length}>
          <span className="scale-words" aria-hidden="true">
            {words(scores[0]!)}
          </span>
          <div className="scale-numbers">{scores.map(children)}</div>
        </div>
      ))}
    </div>
  );
}
