import { Input, Label, TextArea, TextField } from 'react-aria-components';
import type { AutoStep } from '#core/programme/nextStep';
import { strongPainFrom } from '#core/safety/painScale';
import type { Footwear } from '#documents/plan/planDocument';
import { planBounds, planRanges } from '#documents/plan/planRanges';
import { Choice } from '#ui/components/Choice';
import { NumberBox } from '#ui/components/NumberBox';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';
import { PerWeek, UsualPain } from './OpenNumber';
import { PatientField } from './PatientField';
import { PlanLanguage } from './PlanLanguage';
import { ReturnKey } from './ReturnKey';
import { Tick } from './Tick';
import { VideoWish } from './VideoWish';

const footwear: { id: Footwear; name: string }[] = [
  { id: 'either', name: 'Shoes or bare feet' },
  { id: 'shoes', name: 'Shoes' },
  { id: 'bare-feet', name: 'Bare feet' },
];

/** Who it is for, when to stop, how often, and the therapist's own words. */
export function GeneralFields() {
  const writing = usePlanWriting();
  const draft = usePlanWritingState((state) => state.draft);
  return (
    <section className="card plan-card" aria-label="Patient and instructions">
      <PatientField />
      <div className="plan-pair">
        <NumberBox
          label="Pain limit, 0 to 10"
          value={draft.painLimit}
          range={planRanges.painLimit}
          onChange={(painLimit) => writing.change({ painLimit }, 'painLimit')}
        />
        <Choice
          label="Footwear"
          options={footwear}
          value={draft.footwear}
          onChange={(chosen) => writing.change({ footwear: chosen })}
        />
        <TextField
          className="field"
          type="date"
          value={draft.reviewDate ?? ''}
          onChange={(day) => writing.change({ reviewDate: day === '' ? null : day }, 'reviewDate')}
        >
          <Label className="field-label">Review date</Label>
          <Input className="text-input" />
        </TextField>
      </div>
      {draft.painLimit >= strongPainFrom && (
        <p className="small soft">
          From a pain of {strongPainFrom} on, the patient is always told to stop, whatever the plan says.
        </p>
      )}
      <UsualPain />
      <GoingOn />
      <LongText field="beyondPainLimit" label="Above the pain limit" rows={2} />
      <LongText field="ifItGivesWay" label="If the knee gives way, locks or gets stuck" rows={2} />
      <PerWeek />
      <PlanLanguage />
      <LongText field="howOften" label="How often, in your words" rows={1} />
      <LongText field="words" label="Your own words to the patient" rows={3} />
      <ReturnKey />
      <VideoWish />
      <ByItself />
    </section>
  );
}

function GoingOn() {
  const writing = usePlanWriting();
  const mayGoOn = usePlanWritingState(({ draft }) => draft.mayGoOnAbove);
  return (
    <Tick isSelected={mayGoOn} onChange={(mayGoOnAbove) => writing.change({ mayGoOnAbove })}>
      May go on above the limit where the patient says that you agreed; never from {strongPainFrom} on
    </Tick>
  );
}

const autoStepOptions: { id: AutoStep; name: string; hint: string }[] = [
  { id: 'propose', name: 'No: the next step is proposed to you', hint: '' },
  {
    id: 'within-plan',
    name: 'More repetitions, or a day of rest and the same again',
    hint: 'up to the most that each task says; never another stage',
  },
  { id: 'never', name: 'No, and nothing is proposed', hint: '' },
];

/** What the patient's device may change by itself. */
function ByItself() {
  const writing = usePlanWriting();
  const autoStep = usePlanWritingState(({ draft }) => draft.autoStep);
  const own = usePlanWritingState(({ plan }) => Object.keys(plan?.thresholds ?? {}).length);
  return (
    <>
      <Choice
        label="What the patient’s device may change by itself"
        options={autoStepOptions}
        value={autoStep}
        onChange={(next) => writing.change({ autoStep: next })}
      />
      {own > 0 && (
        <p className="small soft">
          {own === 1
            ? 'One line that you set for this patient goes along: the rules draw it there at home, too.'
            : `${own} lines that you set for this patient go along: the rules draw them there at home, too.`}
        </p>
      )}
    </>
  );
}

function LongText(props: {
  field: 'beyondPainLimit' | 'ifItGivesWay' | 'howOften' | 'words';
  label: string;
  rows: number;
}) {
  const { field, label, rows } = props;
  const writing = usePlanWriting();
  const value = usePlanWritingState(({ draft }) => draft[field]);
  return (
    <TextField
      className="field"
      value={value}
      maxLength={planBounds[field]}
      onChange={(text) => writing.change({ [field]: text }, field)}
    >
      <Label className="field-label">{label}</Label>
      <TextArea className="text-input" rows={rows} />
    </TextField>
  );
}
