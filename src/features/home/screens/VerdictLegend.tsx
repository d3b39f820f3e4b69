import type { PlanItem } from '#documents/plan/planDocument';
import { VerdictMark } from '#ui/components/VerdictMark';
import { hasLiveFeedback } from './hasLiveFeedback';

/** What the big words and marks of the set will mean, told before it; nothing where the plan wants none shown. */
export function VerdictLegend({ item }: { item: PlanItem }) {
  if (!hasLiveFeedback(item)) return null;
  return (
    <section className="home-section">
      <h2>What you will see</h2>
      <ul className="home-list verdict-legend">
        {item.kind === 'repetitions' && item.feedback === 'every-repetition' && (
          <li>
            <VerdictMark verdict="in" sizePx={24} /> <strong>Good</strong>: your knee stayed over the foot.
          </li>
        )}
        <li>
          <VerdictMark verdict="out" pointing="left" sizePx={24} /> <strong>Knee out</strong> or{' '}
          <strong>Knee in</strong>: guide it that way next time. The triangle shows which way it went.
        </li>
      </ul>
    </section>
  );
}
