import { useState, type FormEvent } from 'react';
import { Button } from 'react-aria-components';
import { findTask } from '#core/exercises/exercises';
import type { PoseModel } from '#core/keypoints/poseModel';
import { useReview, useReviewState } from '#features/review/reviewContext';
import { useTracking, useTrackingState } from '#shell/tracking/trackingContext';
import { BodyHeight } from '#ui/components/BodyHeight';
import { Choice, type Option } from '#ui/components/Choice';
import { ErrorLine } from '#ui/components/ErrorLine';
import { FileDrop } from '#ui/components/FileDrop';
import { SideChoice } from '#ui/components/SideChoice';
import { TaskChoice } from '#ui/components/TaskChoice';
import { sideHint } from '#words/exerciseWords';
import { ChosenVideo } from './ChosenVideo';

const models: Option<PoseModel>[] = [
  { id: 'lite', name: 'Quick (lite)', hint: 'For a first look, or a slow device. The least exact.' },
  {
    id: 'full',
    name: 'Balanced (full)',
    hint: 'The usual choice, and the most exact of the three where they were compared.',
  },
  {
    id: 'heavy',
    name: 'Thorough (heavy)',
    hint: 'Three times slower, and no more exact where they were compared.',
  },
];

/** Everything that a measurement needs: a video, the task, the working side, and which model to use. */
export function MeasureForm() {
  const review = useReview();
  const tracking = useTracking();
  const { task, side, bodyHeightCm } = useReviewState((state) => state.setup);
  const model = useTrackingState((state) => state.model);
  const chosen = useReviewState((state) => state.chosen);
  const isOpening = useReviewState((state) => state.opening === 'file');
  const [wasPressed, setWasPressed] = useState(false);

  const submit = (event: FormEvent) => {
    event.preventDefault();
    setWasPressed(true);
    void review.startTracking();
  };

  return (
    <form className="measure-form" onSubmit={submit}>
      <FileDrop
        buttonText={chosen === null ? 'Choose a video' : 'Choose another video'}
        onFiles={(files) => void review.openFiles(files)}
      >
        {chosen !== null && <ChosenVideo facts={chosen} />}
        {chosen === null && (
          <p>
            {isOpening ? 'Opening the file …' : 'Drop a video here: whole body, square from the front.'}
            <span className="small soft"> Several clips wait their turn. Saved recordings open too.</span>
          </p>
        )}
      </FileDrop>
      <WaitingClips />
      {wasPressed && chosen === null && !isOpening && <ErrorLine sentence="Choose a video first." isSmall />}
      <div className="measure-pair">
        <div className="field">
          <TaskChoice value={task} onChange={review.setTask} />
          {findTask(task).viewSigns.includes('stance-foot') && (
            <p className="small soft">
              Measured best when the recording begins with two easy bends, both feet on the floor. They show
              how the body is turned to the camera.
            </p>
          )}
        </div>
        <Choice label="How closely to look" options={models} value={model} onChange={tracking.setModel} />
      </div>
      <div className="measure-pair">
        <SideChoice
          value={side}
          onChange={review.setSide}
          hint={sideHint(task)}
          error={wasPressed && side === null ? 'Choose the working side first.' : null}
        />
        <BodyHeight value={bodyHeightCm} onChange={review.setBodyHeight} />
      </div>
      <Button type="submit" className="button button-primary">
        Measure this video
      </Button>
    </form>
  );
}

/** Clips that were dropped together with the chosen one. */
function WaitingClips() {
  const review = useReview();
  const waiting = useReviewState((state) => state.waiting);
  if (waiting.length === 0) return null;
  return (
    <div className="small measure-waiting">
      <span>Then, each with its own exercise and side: {waiting.map(({ name }) => name).join(', ')}</span>
      <Button className="button button-quiet" onPress={() => void review.openNext()}>
        Take the next one now
      </Button>
      <Button className="button button-quiet" onPress={review.forgetWaiting}>
        Leave them out
      </Button>
    </div>
  );
}
