import { findTask } from '#core/exercises/exercises';
import { depthOfBend } from '#core/measures/depth';
import { supports, type Support } from '#core/protocol/support';
import { upToOf } from '#documents/plan/itemProgress';
import type { PlanItem } from '#documents/plan/planDocument';
import { planRanges } from '#documents/plan/planRanges';
import { Choice } from '#ui/components/Choice';
import { LoadFields } from './LoadFields';
import { OpenBox } from './OpenBox';
import { Tick } from './Tick';

interface Props {
  item: PlanItem;
  onChange: (item: PlanItem, field?: string) => void;
}

const supportWords: Record<Support, string> = {
  none: 'Nothing held',
  fingertip: 'A fingertip',
  hand: 'A hand',
};

/** How an item is set up: seat, step, how deep, what is held, load; and how it is done and progressed. */
export function ProgressFields({ item, onChange }: Props) {
  const { support, bendDeg, perWeek } = item;
  return (
    <>
      <div className="plan-pair">
        {item.kind === 'repetitions' && findTask(item.task).shape === 'rise' && (
          <OpenBox
            label="Seat height, cm"
            value={item.seatHeightCm}
            range={planRanges.seatHeightCm}
            onChange={(seatHeightCm) => onChange({ ...item, seatHeightCm }, 'seat')}
          />
        )}
        {item.kind === 'repetitions' && findTask(item.task).preparation.needs.includes('step') && (
          <OpenBox
            label="Step height, cm"
            value={item.stepHeightCm}
            range={planRanges.stepHeightCm}
            onChange={(stepHeightCm) => onChange({ ...item, stepHeightCm }, 'step')}
          />
        )}
        <OpenBox
          label="Knee bend, °"
          value={bendDeg}
          range={planRanges.bendDeg}
          onChange={(next) => onChange({ ...item, bendDeg: next }, 'bend')}
        />
        <Choice
          label="Holding on"
          options={[
            { id: 'open', name: 'Not said' },
            ...supports.map((id) => ({ id, name: supportWords[id] })),
          ]}
          value={support ?? 'open'}
          onChange={(id) => onChange({ ...item, support: id === 'open' ? null : id })}
        />
        <LoadFields item={item} onChange={onChange} />
        <OpenBox
          label="Times a week"
          value={perWeek}
          range={planRanges.perWeek}
          onChange={(next) => onChange({ ...item, perWeek: next }, 'itemPerWeek')}
        />
        {item.kind === 'repetitions' && <UpTo item={item} onChange={onChange} />}
      </div>
      {bendDeg !== null && item.kind === 'repetitions' && (
        <p className="small soft">
          A bend of {bendDeg}° is a depth of about {Math.round(100 * depthOfBend(bendDeg))} % of leg length,
          with thigh and shank leaning alike.
        </p>
      )}
      {item.sides.length > 1 && (
        <Tick isSelected={item.sidesInTurn} onChange={(sidesInTurn) => onChange({ ...item, sidesInTurn })}>
          Legs in turn: one rests while the other works
        </Tick>
      )}
    </>
  );
}

/** Repetitions to work up to; empty as the stage or the library says. */
function UpTo({ item, onChange }: Props & { item: Extract<PlanItem, { kind: 'repetitions' }> }) {
  const usual = upToOf({ ...item, upTo: null });
  const put = (end: 'min' | 'max', value: number | null) => {
    if (value === null) return onChange({ ...item, upTo: null }, `upTo-${end}`);
    const { min, max } = item.upTo ?? usual ?? { min: value, max: value };
    onChange(
      { ...item, upTo: end === 'min' ? { min: value, max: Math.max(value, max) } : { min, max: value } },
      `upTo-${end}`,
    );
  };
  return (
    <>
      <OpenBox
        label="Goal, repetitions"
        placeholder={usual === null ? '–' : String(usual.min)}
        value={item.upTo?.min ?? null}
        range={planRanges.upTo}
        onChange={(value) => put('min', value)}
      />
      <OpenBox
        label="Most repetitions"
        placeholder={usual === null ? '–' : String(usual.max)}
        value={item.upTo?.max ?? null}
        range={planRanges.upTo}
        onChange={(value) => put('max', value)}
      />
    </>
  );
}
