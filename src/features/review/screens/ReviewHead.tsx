import { memo, useEffect, useRef } from 'react';
import { Button, RadioButton, RadioField, RadioGroup } from 'react-aria-components';
import { sides, type Side } from '#core/protocol/side';
import { useNavigation, useNavigationState } from '#shell/navigation/navigationContext';
import type { ShownRecording } from '#shell/tracking/shownRecording';
import { Brand } from '#ui/components/Brand';
import { TaskChoice } from '#ui/components/TaskChoice';
import { useReview, useReviewState } from '../reviewContext';
import type { ReviewState } from '../store/reviewState';
import { CorrectionsPanel } from './CorrectionsPanel';
import { DemoNote } from './DemoNote';
import { KeepFor } from './KeepFor';
import { KeepingLine } from './KeepingLine';
import { TableMenu } from './TableMenu';

/** What is shown, measured as what, and what can be done with it. */
export const ReviewHead = memo(function ReviewHead({ recording }: { recording: ShownRecording }) {
  const review = useReview();
  const navigation = useNavigation();
  const from = useNavigationState((state) => state.from);
  const backTo = from === 'sessions' || from === 'patient' ? from : 'start';
  const { task, side } = recording.measurement.setup;
  const isKept = useReviewState((state) => state.session !== null || isKeptState(state));
  const isOwn = recording.origin !== 'example' && !isKept;
  const heading = useRef<HTMLHeadingElement>(null);
  // Whoever reads the screen aloud, or uses keys, begins here and not in the screen before.
  useEffect(() => heading.current?.focus({ preventScroll: true }), []);
  return (
    <header className="review-head">
      <Brand />
      <div className="review-name">
        <h1 ref={heading} tabIndex={-1} className="review-file" title={recording.fileName}>
          {recording.fileName}
        </h1>
        <Button className="skip-link" onPress={skipToRepetitions}>
          Skip to the repetitions
        </Button>
        <div className="review-under">
          <DemoNote recording={recording} />
          <KeepingLine />
        </div>
      </div>
      <div className="review-setup">
        <TaskChoice value={task} onChange={review.setTask} isLabelHidden />
        <RadioGroup
          className="review-sides"
          aria-label="Working side"
          value={side}
          onChange={(value) => review.setSide(value as Side)}
        >
          {sides.map((name) => (
            <RadioField key={name} value={name}>
              <RadioButton className="side-option">{name === 'left' ? 'Left' : 'Right'}</RadioButton>
            </RadioField>
          ))}
        </RadioGroup>
      </div>
      <CorrectionsPanel />
      <div className="review-actions no-print">
        <Button className="button" onPress={() => navigation.returnTo(backTo)}>
          {backWords[backTo]}
        </Button>
        <TableMenu />
        {isOwn && (
          <div className="review-keep">
            <KeepFor />
          </div>
        )}
        <Button
          className={`button review-save ${isOwn ? '' : 'button-primary'}`}
          onPress={review.saveRecording}
        >
          Save recording
        </Button>
      </div>
    </header>
  );
});

function skipToRepetitions() {
  const table = document.querySelector<HTMLElement>('.review-table');
  const row = table?.querySelector<HTMLElement>('[data-key][tabindex="0"]');
  (row ?? table)?.focus();
}

/** Whether it was kept before it was opened: then it is somebody's already. */
function isKeptState({ keeping, keptFor }: ReviewState): boolean {
  return keptFor === null && ['kept', 'saving', 'failed'].includes(keeping.state);
}

const backWords = {
  start: 'New video',
  sessions: 'Back to kept sessions',
  patient: 'Back to the patient',
};
