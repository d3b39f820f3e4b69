import { useState } from 'react';
import { Button, Dialog, Heading } from 'react-aria-components';
import { useNavigation } from '#shell/navigation/navigationContext';
import { DialogBox } from '#ui/components/DialogBox';
import { PseudonymForm } from '#ui/components/PseudonymForm';
import { useReview, useReviewState } from '../reviewContext';

/** Keeps the shown recording under a patient; once it is kept, leads to the next clip that waits. */
export function KeepFor() {
  const review = useReview();
  const navigation = useNavigation();
  const keeping = useReviewState((state) => state.keeping.state);
  const keptFor = useReviewState((state) => state.keptFor);
  const waiting = useReviewState((state) => state.waiting.length);
  const [known, setKnown] = useState<readonly string[] | null>(null);
  if (keptFor !== null)
    return waiting === 0 || keeping === 'saving' ? null : (
      <Button
        className="button button-primary"
        onPress={() =>
          void navigation.show('start').then((isShown) => (isShown ? review.openNext() : undefined))
        }
      >
        Next clip ({waiting})
      </Button>
    );
  return (
    <>
      <Button className="button button-primary" onPress={() => void review.knownPseudonyms().then(setKnown)}>
        Keep for …
      </Button>
      <DialogBox isOpen={known !== null} onOpenChange={() => setKnown(null)} isDismissable>
        <Dialog className="dialog">
          <Heading slot="title">Keep for which patient?</Heading>
          {known !== null && <KeepForm known={known} onDone={() => setKnown(null)} />}
        </Dialog>
      </DialogBox>
    </>
  );
}

function KeepForm({ known, onDone }: { known: readonly string[]; onDone: () => void }) {
  const review = useReview();
  const filmedOn = useReviewState((state) => state.filmedOn);
  const [day, setDay] = useState(filmedOn);
  return (
    <>
      <label className="field">
        <span className="field-label">Filmed on</span>
        <input
          type="date"
          required
          className="text-input"
          value={day}
          onChange={({ target }) => setDay(target.value)}
        />
      </label>
      <PseudonymForm
        known={known}
        answer="Keep"
        onCancel={onDone}
        onAnswer={(pseudonym) => {
          onDone();
          void review.keepFor(pseudonym, day === '' ? filmedOn : day);
        }}
      />
    </>
  );
}
