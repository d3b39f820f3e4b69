import { sides, type Side } from '#core/protocol/side';
import { ScaleChoice } from '#ui/components/ScaleChoice';
import { message } from '#words/messages/message';
import { painWords } from '#words/painWords';
import type { SaidPain } from '../store/homeState';

interface Props {
  said: SaidPain;
  onChange: (score: number, side: Side | null) => void;
  /** Whether the last number that is asked for leads on. */
  leadsOn?: boolean;
}

/** The question that the scales answer. */
export function painQuestion({ painBySide }: SaidPain): string {
  return message(painBySide === null ? 'pain.before' : 'pain.before-both');
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
          question={message('pain.knee', { side })}
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
