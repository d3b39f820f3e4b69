import { measures } from '#core/measures/measures';
import { addedMeasures } from '#core/protocol/limits';
import { Choice } from '#ui/components/Choice';
import { useReview, useReviewState } from '../reviewContext';

/** Which measure is shown, everywhere on the screen. */
export function MeasureChoice() {
  const review = useReview();
  const measure = useReviewState((state) => state.measure);
  const limits = useReviewState((state) => state.limits);
  const added = addedMeasures(limits);
  const options = measures.map(({ id, name }) => ({
    id,
    name,
    ...(added.includes(id) ? { hint: 'has a limit' } : {}),
  }));
  return (
    <Choice label="Measure" isLabelHidden options={options} value={measure} onChange={review.showMeasure} />
  );
}
