import { Button, Disclosure, DisclosurePanel } from 'react-aria-components';
import { measures, type MeasureId } from '#core/measures/measures';
import type { FeedbackMode } from '#core/protocol/feedback';
import type { RepetitionItem } from '#documents/plan/planDocument';
import { Choice } from '#ui/components/Choice';
import { MeasureLimits, MeasureLimitSource } from '#ui/components/MeasureLimits';
import { addedLimitsWords, kneeLimitWords } from '#words/limitWords';

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

/** Spoken feedback, and in one line the limits, which opens to change them. */
export function RepetitionFields({ item, onChange }: Props) {
  const { limits } = item;
  const added = addedLimitsWords(limits);
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
      <Disclosure className="plan-limits">
        <Button slot="trigger" className="button button-quiet">
          Limits: knee angle {kneeLimitWords(limits)}
          {added === '' ? '' : ` · ${added}`}
        </Button>
        <DisclosurePanel>{measures.map(limitsOf)}</DisclosurePanel>
      </Disclosure>
    </>
  );
}
