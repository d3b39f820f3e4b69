import { Button, Dialog, DialogTrigger, Input, Label, Popover, TextField } from 'react-aria-components';
import { longestName } from '#documents/recording/correctionSchema';
import { correctionSentence } from '#words/correctionWords';
import { useReview, useReviewState } from '../reviewContext';

/** What was corrected by hand, undo and redo, who is reviewing, and whether it is saved. */
export function CorrectionsPanel() {
  const review = useReview();
  const { done, undone } = useReviewState((state) => state.corrections);
  const undoable = useReviewState((state) => state.undoable);
  const isMoving = useReviewState((state) => state.limits.movingFrom !== null);
  const reviewer = useReviewState((state) => state.reviewer);
  return (
    <div className="corrections no-print">
      <DialogTrigger>
        <Button className="button button-quiet">
          {done.length === 0 ? 'Corrections' : `Corrected by hand (${done.length})`}
        </Button>
        <Popover className="popover" placement="bottom end">
          <Dialog aria-label="Corrections" className="corrections-list">
            {done.length === 0 ? (
              <p className="soft">
                Nothing has been corrected. Corrections are saved alongside the original and can be undone.
              </p>
            ) : (
              <ol>
                {done.map(({ change, by, at }, index) => (
                  <li key={index}>
                    {correctionSentence(change)} <Signed by={by} at={at} />
                  </li>
                ))}
              </ol>
            )}
            <TextField
              className="field"
              value={reviewer}
              onChange={review.setReviewer}
              maxLength={longestName}
              autoComplete="off"
            >
              <Label className="field-label">Your initials, shown next to what you set</Label>
              <Input className="text-input" />
            </TextField>
          </Dialog>
        </Popover>
      </DialogTrigger>
      <Button
        className="button button-quiet"
        isDisabled={undoable.length === 0 && !isMoving}
        onPress={review.undo}
        aria-label="Undo the last change"
      >
        Undo
      </Button>
      <Button
        className="button button-quiet"
        isDisabled={undone.length === 0}
        onPress={review.redo}
        aria-label="Redo the last correction"
      >
        Redo
      </Button>
    </div>
  );
}

/** Who set something, and when. */
export function Signed({ by, at }: { by: string; at: string }) {
  const when = new Date(at).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' });
  return (
    <span className="soft small">
      {by === '' ? 'Not signed' : by}, {when}
    </span>
  );
}
