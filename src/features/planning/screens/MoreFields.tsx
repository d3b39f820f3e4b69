import { Button, Disclosure, DisclosurePanel } from 'react-aria-components';
import { findTask } from '#core/exercises/exercises';
import { depthOfBend } from '#core/measures/depth';
import { supports, type Support } from '#core/protocol/support';
import { itemFacts } from '#documents/plan/itemFacts';
import { upToOf, usualTempo } from '#documents/plan/itemProgress';
import type { PlanItem, RepetitionItem, Tempo } from '#documents/plan/planDocument';
import { planRanges } from '#documents/plan/planRanges';
import { Choice } from '#ui/components/Choice';
import { NumberBox } from '#ui/components/NumberBox';
import { LoadFields } from './LoadFields';
import { OpenBox } from './OpenBox';
import { Tick } from './Tick';

interface Props {
  item: PlanItem;
  onChange: (item: PlanItem, field?: string) => void;
}

type RepetitionProps = Props & { item: RepetitionItem };

const supportWords: Record<Support, string> = {
  none: 'Nothing held',
  fingertip: 'A fingertip',
  hand: 'A hand',
};

const names: Record<PlanItem['kind'], string> = {
  repetitions: 'Bend, holding on, load, tempo, times a week, goal',
  hold: 'Bend, holding on, load, times a week',
};

/** The less used fields of an item, closed; one line says what is set in them. */
export function MoreFields(props: Props) {
  const said = saidOf(props.item);
  return (
    <Disclosure className="plan-limits">
      <Button slot="trigger" className="button button-quiet">
        {names[props.item.kind]}
        {said === '' ? '' : `: ${said}`}
      </Button>
      <DisclosurePanel>
        <Fields {...props} />
      </DisclosurePanel>
    </Disclosure>
  );
}

function saidOf(item: PlanItem): string {
  const heights = { seatHeightCm: null, stepHeightCm: null };
  const facts = itemFacts({ ...item, ...(item.kind === 'hold' ? {} : heights), restSeconds: 0 });
  const goal =
    item.kind === 'repetitions' && item.upTo !== null
      ? [`${item.upTo.min} to ${item.upTo.max} repetitions`]
      : [];
  const noLoad = item.load?.kind === 'none' ? ['no load'] : [];
  return [...facts.map((fact) => fact.replace(/\.$/, '')), ...noLoad, ...goal].join(' · ');
}

function Fields({ item, onChange }: Props) {
  const { support, bendDeg, perWeek } = item;
  return (
    <>
      <div className="plan-pair">
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
      {item.kind === 'repetitions' && <TempoFields item={item} onChange={onChange} />}
      {item.sides.length > 1 && (
        <Tick isSelected={item.sidesInTurn} onChange={(sidesInTurn) => onChange({ ...item, sidesInTurn })}>
          Legs in turn: one rests while the other works
        </Tick>
      )}
    </>
  );
}

/** Repetitions to work up to; empty as the stage or the library says. */
function UpTo({ item, onChange }: RepetitionProps) {
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

function TempoFields({ item, onChange }: RepetitionProps) {
  const { tempo } = item;
  const { shape } = findTask(item.task);
  const [down, up] = shape === 'reach' ? ['Back', 'Out'] : ['Down', 'Up'];
  const tempoBox = (field: keyof Tempo, label: string) =>
    tempo !== null && (
      <NumberBox
        label={`${label}, s`}
        value={tempo[field]}
        range={planRanges[field]}
        onChange={(value) => onChange({ ...item, tempo: { ...tempo, [field]: value } }, field)}
      />
    );
  return (
    <div className="plan-pair">
      <Tick
        isSelected={tempo !== null}
        onChange={(isSet) => onChange({ ...item, tempo: isSet ? usualTempo : null })}
      >
        Tempo
      </Tick>
      {tempoBox('downSeconds', shape === 'reach' ? up : down)}
      {tempoBox('pauseSeconds', 'Stay')}
      {tempoBox('upSeconds', shape === 'reach' ? down : up)}
    </div>
  );
}
