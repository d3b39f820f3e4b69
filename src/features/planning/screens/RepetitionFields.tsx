import { Button, Disclosure, DisclosurePanel } from 'react-aria-components';
import { findTask } from '#core/exercises/exercises';
import { measures, type MeasureId } from '#core/measures/measures';
import type { FeedbackMode } from '#core/protocol/feedback';
import { usualTempo } from '#documents/plan/itemProgress';
import type { RepetitionItem, Tempo } from '#documents/plan/planDocument';
import { planRanges } from '#documents/plan/planRanges';
import { Choice } from '#ui/components/Choice';
import { MeasureLimits, MeasureLimitSource } from '#ui/components/MeasureLimits';
import { NumberBox } from '#ui/components/NumberBox';
import { addedLimitsWords } from '#words/limitWords';
import { Tick } from './Tick';

interface Props {
  item: RepetitionItem;
  onChange: (item: RepetitionItem, field?: string) => void;
}

const feedbackOptions: { id: FeedbackMode; name: string; hint: string }[] = [
  { id: 'every-repetition', name: 'After every repetition', hint: 'for learning' },
  { id: 'only-outside', name: 'Only outside the lane', hint: 'less feedback helps it become a habit' },
  { id: 'after-the-set', name: 'A summary after the set', hint: '' },
  { id: 'none', name: 'None', hint: '' },
];

/** Spoken feedback, the lane's limits, and tempo. */
export function RepetitionFields({ item, onChange }: Props) {
  const { limits, tempo } = item;
  const limited = addedLimitsWords(limits);
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
  const limitsOf = ({ id, name }: { id: MeasureId; name: string }) => (
    <div key={id} className="plan-limit">
      <h4>{name}</h4>
      <MeasureLimits
        measure={id}
        limits={limits}
        onMove={(next) => onChange({ ...item, limits: next }, id)}
        onMoveEnd={() => undefined}
      />
      <p className="small soft">
        <MeasureLimitSource measure={id} />
      </p>
    </div>
  );
  return (
    <>
      <div className="plan-pair">
        <Choice
          label="Spoken feedback"
          options={feedbackOptions}
          value={item.feedback}
          onChange={(feedback) => onChange({ ...item, feedback })}
        />
      </div>
      {measures.filter(({ isAlwaysLimited }) => isAlwaysLimited).map(limitsOf)}
      <Disclosure className="plan-limits">
        <Button slot="trigger" className="button button-quiet">
          Limits of other measures{limited === '' ? '' : `: ${limited}`}
        </Button>
        <DisclosurePanel>
          {measures.filter(({ isAlwaysLimited }) => !isAlwaysLimited).map(limitsOf)}
        </DisclosurePanel>
      </Disclosure>
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
    </>
  );
}
