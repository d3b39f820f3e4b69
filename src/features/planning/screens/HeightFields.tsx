import { findTask } from '#core/exercises/exercises';
import type { PlanItem } from '#documents/plan/planDocument';
import { planRanges } from '#documents/plan/planRanges';
import { OpenBox } from './OpenBox';

interface Props {
  item: PlanItem;
  onChange: (item: PlanItem, field?: string) => void;
}

/** Heights of a seat and of a step, where an exercise needs them. */
export function HeightFields({ item, onChange }: Props) {
  if (item.kind === 'hold') return null;
  const { shape, preparation } = findTask(item.task);
  return (
    <>
      {shape === 'rise' && (
        <OpenBox
          label="Seat height, cm"
          value={item.seatHeightCm}
          range={planRanges.seatHeightCm}
          onChange={(seatHeightCm) => onChange({ ...item, seatHeightCm }, 'seat')}
        />
      )}
      {preparation.needs.includes('step') && (
        <OpenBox
          label="Step height, cm"
          value={item.stepHeightCm}
          range={planRanges.stepHeightCm}
          onChange={(stepHeightCm) => onChange({ ...item, stepHeightCm }, 'step')}
        />
      )}
    </>
  );
}
