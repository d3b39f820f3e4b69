import { useEffect } from 'react';
import { Button } from 'react-aria-components';
import { useNavigation } from '#shell/navigation/navigationContext';
import { Brand } from '#ui/components/Brand';
import { ProblemMessage } from '#ui/components/ProblemMessage';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';
import { GeneralFields } from './GeneralFields';
import { HandOut } from './HandOut';
import { ItemList } from './ItemList';
import { LibraryButton } from './LibraryButton';
import { PlanSheet } from './PlanSheet';
import { Templates } from './Templates';
import './plan.css';

/** Writing a plan for a patient: the form, and next to it the sheet that the patient gets. */
export function PlanScreen() {
  const navigation = useNavigation();
  const writing = usePlanWriting();
  const canUndo = usePlanWritingState((state) => state.canUndo);
  const canRedo = usePlanWritingState((state) => state.canRedo);
  const problem = usePlanWritingState((state) => state.problem);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      const isText = event.target instanceof HTMLInputElement || event.target instanceof HTMLTextAreaElement;
      if (isText || !(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== 'z') return;
      event.preventDefault();
      if (event.shiftKey) writing.redo();
      else writing.undo();
    };
    addEventListener('keydown', onKey);
    return () => removeEventListener('keydown', onKey);
  }, [writing]);

  return (
    <div className="plan">
      <header className="plan-head">
        <Brand />
        <nav className="button-row">
          <Button className="button button-quiet" isDisabled={!canUndo} onPress={() => writing.undo()}>
            Undo
          </Button>
          <Button className="button button-quiet" isDisabled={!canRedo} onPress={() => writing.redo()}>
            Redo
          </Button>
          <Templates />
          <LibraryButton />
          <Button className="button button-quiet" onPress={() => writing.startNew()}>
            Empty plan
          </Button>
          <Button className="button button-quiet" onPress={() => navigation.returnTo('start')}>
            Back to the start
          </Button>
        </nav>
      </header>
      <main className="plan-main">
        <div className="plan-form">
          <h1>Write a plan for a patient</h1>
          <ProblemMessage problem={problem} onClose={() => writing.dismissProblem()} />
          <GeneralFields />
          <ItemList />
        </div>
        <div className="plan-side">
          <HandOut />
          <PlanSheet />
        </div>
      </main>
    </div>
  );
}
