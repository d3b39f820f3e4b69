import { Button, Dialog, DialogTrigger, Input, Label, Popover, TextField } from 'react-aria-components';
import { longestName } from '#documents/recording/correctionSchema';
import { correctionSentence } from '#words/correctionWords';
import { momentWords } from '#words/dateWords';
import { useReview, useReviewState } from '../reviewContext';
import { correctionsOf } from '../store/reviewEdits';

/** What was corrected by hand, undo and redo, who is reviewing, and whether it is saved. */
export function CorrectionsPanel() {
  const review = useReview();
  const edits = useReviewState((state) => state.edits);
  const reviewer = useReviewState((state) => state.reviewer);
  const corrections = correctionsOf(edits);
  return (
    <div className="corrections no-print">
      <DialogTrigger>
        <Button className="button button-quiet corrections-open">
          Corrections{corrections.length > 0 && ` (${corrections.length})`}
        </Button>
        <Popover className="popover" placement="bottom end">
          <Dialog aria-label="Corrections" className="corrections-list">
            {corrections.length === 0 ? (
              <p className="soft">
                Nothing has been corrected. Corrections are saved alongside the original and can be undone.
              </p>
            ) : (
              <ol>
                {corrections.map(({ change, by, at }, index) => (
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
        isDisabled={edits.done.length === 0 && edits.moving === null}
        onPress={review.undo}
        aria-label="Undo the last change"
      >
        Undo
      </Button>
      <Button
        className="button button-quiet"
        isDisabled={edits.undone.length === 0}
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
  return (
    <span className="soft small">
      {by === '' ? 'Not signed' : by}, {momentWords(at)}
    </span>
  );
}
