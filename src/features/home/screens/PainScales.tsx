import { sides, type Side } from '#core/protocol/side';
import { painWords, scaleQuestions } from '#core/safety/painScale';
import { ScaleChoice } from '#ui/components/ScaleChoice';
import type { SaidPain } from '../store/homeState';

interface Props {
  said: SaidPain;
  onChange: (score: number, side: Side | null) => void;
  /** Whether the last number that is asked for leads on. */
  leadsOn?: boolean;
}

const kneeNames: Record<Side, string> = { left: 'Left knee', right: 'Right knee' };

/** The question that the scales answer. */
export function painQuestion({ painBySide }: SaidPain): string {
  return painBySide === null ? scaleQuestions.painBefore.question : 'How much do your knees hurt right now?';
}

/** How much it hurts right now, each knee by itself where both are asked; the question is shown above. */
export function PainScales({ said, onChange, leadsOn = false }: Props) {
  const { painBefore, painBySide } = said;
  if (painBySide === null) {
    return (
      <ScaleChoice
        question={painQuestion(said)}
        isQuestionHidden
        words={painWords}
        value={painBefore}
        onChange={(score) => onChange(score, null)}
        leadsOn={leadsOn}
      />
    );
  }
  return (
    <div className="knee-scales">
      {sides.map((side) => (
        <ScaleChoice
          key={side}
          question={kneeNames[side]}
          isSmall
          words={painWords}
          value={painBySide.before[side]}
          onChange={(score) => onChange(score, side)}
          leadsOn={leadsOn}
        />
      ))}
    </div>
  );
}
