import { useEffect, useState } from 'react';
import { Button, Dialog, DialogTrigger } from 'react-aria-components';
import type { PlanDocument } from '#documents/plan/planDocument';
import { planToFragment } from '#documents/plan/planLink';
import { explainProblem } from '#shell/explainProblem';
import { DialogBox } from '#ui/components/DialogBox';
import { ErrorLine } from '#ui/components/ErrorLine';
import { Message } from '#ui/components/Message';
import { PassphraseField } from '#ui/components/PassphraseField';
import { passphraseHint } from '#ui/components/passphraseHint';
import { QrCode } from '#ui/components/QrCode';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';
import { PracticeForm } from './PracticeForm';

/** The ways in which a plan reaches the patient; until it is valid, what is still to be done. */
export function HandOut() {
  const writing = usePlanWriting();
  const plan = usePlanWritingState((state) => state.plan);
  const fault = usePlanWritingState((state) => state.fault);
  const isAsked = usePlanWritingState((state) => state.practice !== null);
  const [asks, setAsks] = useState<'print' | 'change' | null>(null);
  const print = () => {
    writing.handedOut();
    window.print();
  };
  const answered = () => {
    setAsks(null);
    // Once the box is gone, so that it is not on the paper.
    if (asks === 'print') setTimeout(print, 0);
  };
  return (
    <section className="plan-hand-out" aria-label="Give it to the patient">
      {fault !== null && (
        <Message kind="caution" title="The plan is not ready yet">
          <span role="status">{fault}</span>
        </Message>
      )}
      <div className="button-row">
        <DialogTrigger>
          <Button className="button button-primary" isDisabled={plan === null}>
            Link and code
          </Button>
          <DialogBox isDismissable>
            <Dialog aria-label="Link and code" className="plan-link">
              {({ close }) => plan !== null && <LinkAndCode plan={plan} onClose={close} />}
            </Dialog>
          </DialogBox>
        </DialogTrigger>
        <Button className="button" isDisabled={plan === null} onPress={() => writing.save()}>
          Save as a file
        </Button>
        <Button
          className="button"
          isDisabled={plan === null}
          onPress={() => (isAsked ? print() : setAsks('print'))}
        >
          Print
        </Button>
        <Button className="button button-quiet" onPress={() => setAsks('change')}>
          Practice on the paper …
        </Button>
        <DialogBox isOpen={asks !== null} onOpenChange={() => setAsks(null)} isDismissable>
          <Dialog className="dialog">
            <PracticeForm answer={asks === 'print' ? 'Print' : 'Keep'} onDone={answered} />
          </Dialog>
        </DialogBox>
      </div>
    </section>
  );
}

function LinkAndCode({ plan, onClose }: { plan: PlanDocument; onClose: () => void }) {
  const writing = usePlanWriting();
  const [copied, setCopied] = useState<'no' | 'yes' | 'refused'>('no');
  const [isLarge, setLarge] = useState(false);
  const [sealed, setSealed] = useState<string | null>(null);
  const link = `${location.origin}${location.pathname}#${sealed ?? planToFragment(plan)}`;
  // The code can be scanned as soon as it is shown.
  useEffect(() => writing.handedOut(), [writing]);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      setCopied('yes');
    } catch {
      setCopied('refused');
    }
  };
  return (
    <>
      <h2>For {plan.patient}</h2>
      <p>
        Scan the code with the patient’s phone, or send the link. The plan itself is in it: the part after ‘#’
        is never sent to a server, but stays in the browser’s history.{' '}
        {sealed === null
          ? 'Anyone who has the link can read the plan.'
          : 'Only the passphrase opens it: tell it to the patient another way.'}
      </p>
      <div className={isLarge ? 'plan-code plan-code-large' : 'plan-code'}>
        <QrCode text={link} label="The plan as a QR code" />
        <Button
          className="plan-code-button"
          aria-label={isLarge ? 'Make the code smaller' : 'Enlarge the code'}
          onPress={() => setLarge(!isLarge)}
        />
      </div>
      <textarea className="text-input plan-link-text" aria-label="Link" readOnly rows={3} value={link} />
      <p className="small soft" role="status">
        {copied === 'yes' && 'Copied. '}
        {copied === 'refused' && 'The browser blocked copying: select the link above and copy it. '}
        {link.length} characters.
      </p>
      <LinkPassphrase plan={plan} isSealed={sealed !== null} onSealed={setSealed} />
      <div className="button-row">
        <Button className="button button-primary" onPress={() => void copy()}>
          Copy the link
        </Button>
        <Button className="button" onPress={onClose}>
          Close
        </Button>
      </div>
    </>
  );
}

interface LinkPassphraseProps {
  plan: PlanDocument;
  isSealed: boolean;
  onSealed: (fragment: string) => void;
}

/** Puts a passphrase on the link, for whoever does not want the plan to be read in a history or a chat. */
function LinkPassphrase({ plan, isSealed, onSealed }: LinkPassphraseProps) {
  const [passphrase, setPassphrase] = useState('');
  const [fault, setFault] = useState<string | null>(null);
  const [isWorking, setWorking] = useState(false);
  if (isSealed) return null;
  const seal = async () => {
    setWorking(true);
    try {
      const [{ weakPassphrase }, { sealPlanLink }] = await Promise.all([
        import('#shell/passphrase'),
        import('#shell/sealedPlan'),
      ]);
      const weakness = await weakPassphrase(passphrase);
      setFault(weakness);
      if (weakness === null) onSealed(await sealPlanLink(plan, passphrase));
    } catch (error) {
      setFault(explainProblem(error, 'seal').sentence);
    } finally {
      setWorking(false);
    }
  };
  return (
    <details>
      <summary>Put a passphrase on it</summary>
      <PassphraseField
        label="Passphrase of the link"
        hint={passphraseHint}
        value={passphrase}
        onChange={setPassphrase}
      />
      <ErrorLine sentence={fault} />
      <Button className="button" isDisabled={isWorking || passphrase === ''} onPress={() => void seal()}>
        {isWorking ? 'Sealing …' : 'Seal the link'}
      </Button>
    </details>
  );
}
