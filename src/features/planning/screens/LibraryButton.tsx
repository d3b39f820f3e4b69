import { Button } from 'react-aria-components';
import type { LibraryKind } from '#documents/library/libraryDocument';
import { planBounds } from '#documents/plan/planRanges';
import { ErrorLine } from '#ui/components/ErrorLine';
import { HeadDialog } from '#ui/components/HeadDialog';
import { exerciseName } from '#words/exerciseWords';
import { addedLimitsWords, kneeLimitWords } from '#words/limitWords';
import { useLibrary, useLibraryState } from '../libraryContext';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';
import { libraryCandidates } from '../rules/libraryCandidates';
import { KeepWords } from './KeepWords';
import { ShareLibrary } from './ShareLibrary';

/** What the practice uses in many plans: own exercises, words to patients, first limits, stages; and sharing it. */
export function LibraryButton() {
  return (
    <HeadDialog name="Library …" title="The practice’s library">
      <Contents />
    </HeadDialog>
  );
}

function Contents() {
  const library = useLibrary();
  const canUndo = useLibraryState((state) => state.canUndo);
  const sentence = useLibraryState((state) => state.sentence);
  return (
    <>
      <p className="small soft">
        It names no patient, and is in backups. Templates belong to it as well. Where the practice shares
        through a server, all its devices have the same one.
      </p>
      <FromThisPlan />
      <Exercises />
      <Texts />
      <FirstLimits />
      <OwnStages />
      {canUndo && (
        <Button className="button" onPress={() => void library.undo()}>
          Undo the last change of the library
        </Button>
      )}
      <ShareLibrary />
      <ErrorLine sentence={sentence} />
    </>
  );
}

/** What this plan has and the library has not. */
function FromThisPlan() {
  const library = useLibrary();
  const kept = useLibraryState((state) => state.library);
  const draft = usePlanWritingState((state) => state.draft);
  const candidates = libraryCandidates(draft, kept);
  const hasWords = draft.words.trim() !== '' && kept.texts.every(({ text }) => text !== draft.words);
  return (
    <section className="library-part">
      <h3>From this plan</h3>
      {candidates.length === 0 && !hasWords && (
        <p className="small soft">
          Nothing that the library does not have. Own exercises, changed limits and your words to the patient
          can be kept from here.
        </p>
      )}
      <ul className="plan-templates">
        {candidates.map((one) => (
          <li key={`${one.kind} ${one.name}`}>
            <span>
              {one.kind === 'exercises' ? 'Own exercise' : 'First limits of'} <strong>{one.name}</strong>
            </span>
            <Button
              className="button"
              aria-label={`Keep ${one.name}`}
              onPress={() =>
                void (one.kind === 'exercises'
                  ? library.keep('exercises', one.content)
                  : library.keep('limits', one.content))
              }
            >
              Keep
            </Button>
          </li>
        ))}
      </ul>
      {hasWords && <KeepWords words={draft.words} />}
    </section>
  );
}

function Exercises() {
  const writing = usePlanWriting();
  const exercises = useLibraryState((state) => state.library.exercises);
  const freeItems = usePlanWritingState(({ draft }) => draft.freeItems);
  if (exercises.length === 0) return null;
  return (
    <section className="library-part">
      <h3>Own exercises</h3>
      <ul className="plan-templates">
        {exercises.map(({ id, name, how, dose }) => (
          <li key={id}>
            <span>
              <strong>{name}</strong> <span className="small soft">{dose}</span>
            </span>
            <span className="button-row">
              <Button
                className="button"
                aria-label={`Add ${name} to the plan`}
                isDisabled={freeItems.length >= planBounds.freeItems}
                onPress={() => writing.change({ freeItems: [...freeItems, { name, how, dose }] })}
              >
                Add to the plan
              </Button>
              <TakeOut kind="exercises" of={id} name={name} />
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function Texts() {
  const writing = usePlanWriting();
  const texts = useLibraryState((state) => state.library.texts);
  if (texts.length === 0) return null;
  return (
    <section className="library-part">
      <h3>Words to patients</h3>
      <ul className="plan-templates">
        {texts.map(({ id, name, text }) => (
          <li key={id}>
            <strong>{name}</strong>
            <span className="button-row">
              <Button
                className="button"
                aria-label={`Use ${name}`}
                onPress={() => writing.change({ words: text })}
              >
                Use in the plan
              </Button>
              <TakeOut kind="texts" of={id} name={name} />
            </span>
          </li>
        ))}
      </ul>
    </section>
  );
}

function FirstLimits() {
  const limits = useLibraryState((state) => state.library.limits);
  if (limits.length === 0) return null;
  return (
    <section className="library-part">
      <h3>First limits</h3>
      <p className="small soft">A task that is added to a plan begins with them.</p>
      <ul className="plan-templates">
        {limits.map(({ task, limits: first }) => (
          <li key={task}>
            <span>
              <strong>{exerciseName(task)}</strong>{' '}
              <span className="small soft">
                {[kneeLimitWords(first), addedLimitsWords(first)].filter((words) => words !== '').join(', ')}
              </span>
            </span>
            <TakeOut kind="limits" of={task} name={exerciseName(task)} />
          </li>
        ))}
      </ul>
    </section>
  );
}

function OwnStages() {
  const own = useLibraryState((state) => state.library.stages);
  if (own.length === 0) return null;
  return (
    <section className="library-part">
      <h3>Own stages</h3>
      <p className="small soft">In place of the program’s. They are edited in a plan, at the task.</p>
      <ul className="plan-templates">
        {own.map(({ exercise, stages }) => (
          <li key={exercise}>
            <span>
              <strong>{exerciseName(exercise)}</strong>{' '}
              <span className="small soft">
                {stages.length === 1 ? 'one stage' : `${stages.length} stages`}
              </span>
            </span>
            <TakeOut kind="stages" of={exercise} name={`the stages of ${exerciseName(exercise)}`} />
          </li>
        ))}
      </ul>
    </section>
  );
}

/** @param of  by which the entry is known */
function TakeOut({ kind, of, name }: { kind: LibraryKind; of: string; name: string }) {
  const library = useLibrary();
  return (
    <Button
      className="button button-quiet"
      aria-label={`Take ${name} out`}
      onPress={() => void library.remove(kind, of)}
    >
      Take out
    </Button>
  );
}
