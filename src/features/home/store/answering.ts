import type { SessionDocument } from '#documents/session/sessionDocument';
import { explainProblem } from '#shell/explainProblem';
import type { GuideEvent } from '../guide/guideEvent';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp } from './homeApp';
import { answersOf, isSaved, type Answers, type HomeSet, type StepParts } from './homeState';
import type { HomeStorage } from './homeStorage';
import type { HomeStore } from './homeStore';
import type { PainWarnings } from './painWarnings';
import type { SessionSaver } from './sessionSaver';
import type { SetKeeper } from './setKeeper';
import { withPain } from './withPain';

interface AnsweringParts {
  adapters: Pick<HomeAdapters, 'now'>;
  home: HomeStore;
  storage: Pick<HomeStorage, 'repository'>;
  saver: SessionSaver;
  keeper: Pick<SetKeeper, 'settled'>;
  warnings: PainWarnings;
  session: (endedAt: string | null) => SessionDocument;
  /** Tells the guide, where one leads. */
  send: (event: GuideEvent) => void;
}

/** What the person says of the sets and of the session, until it is saved. */
export function answering({
  adapters,
  home,
  storage,
  saver,
  keeper,
  warnings,
  session,
  send,
}: AnsweringParts): Pick<
  HomeApp,
  | 'setPainDuring'
  | 'discardSet'
  | 'undoDiscard'
  | 'setPainAfter'
  | 'setWorstAfterLast'
  | 'setFell'
  | 'setEffort'
  | 'setRemark'
  | 'saveSession'
> {
  const { get, set, change, enter } = home;
  const changeSet = (index: number, changed: Partial<HomeSet>) => {
    if (isSaved(get())) return;
    set({ sets: get().sets.map((one, at) => (at === index ? { ...one, ...changed } : one)) });
  };
  const answer = (answers: Partial<Answers>) => {
    change('after', answers);
    if (!isSaved(get())) change('summary', answers);
    saver.keep();
  };
  const summarise = (saving: StepParts['summary']['saving']) => {
    const { step } = get();
    // Anyone who has left in the meantime is not brought back.
    if (step === 'after' || step === 'summary') enter('summary', { ...answersOf(get()), saving });
  };

  return {
    setPainDuring(index, painDuring) {
      if (isSaved(get())) return;
      changeSet(index, { painDuring });
      saver.keep();
      const warning = warnings.of('during', painDuring);
      if (warning !== null || warnings.isOfSet()) warnings.put(warning);
      // Nothing continues above the limit.
      if (warning !== null) send({ kind: 'press', press: 'pause' });
      if (index === get().sets.length - 1) send({ kind: 'pain-told' });
    },
    discardSet: (index) => changeSet(index, { isDiscarded: true }),
    undoDiscard: (index) => changeSet(index, { isDiscarded: false }),
    setPainAfter(score, side = null) {
      if (isSaved(get())) return;
      const { painBySide, most: painAfter } = withPain(get().painBySide, 'after', side, score);
      set({ painBySide });
      answer({ painAfter });
      change('after', { painWarning: warnings.of('after', painAfter) });
    },
    setWorstAfterLast(worst) {
      const { afterLast } = get();
      if (afterLast === null || isSaved(get())) return;
      set({ afterLast: { ...afterLast, worst } });
      saver.keep();
    },
    setFell(fell) {
      const { endedBecause } = get();
      if (endedBecause === null || isSaved(get())) return;
      set({ endedBecause: { ...endedBecause, fell } });
      saver.keep();
    },
    setEffort: (effort) => answer({ effort }),
    setRemark: (remark) => answer({ remark }),
    async saveSession() {
      const state = get();
      if (state.step !== 'after' && state.step !== 'summary') return;
      if (state.saving === 'saving' || state.saving === 'saved') return;
      change('after', { saving: 'saving' });
      change('summary', { saving: 'saving' });
      set({ problem: null });
      try {
        await saver.settle();
        await keeper.settled();
        const repository = await storage.repository;
        await repository.sessions.save(session(adapters.now().toISOString()));
        for (const { isDiscarded, recordingId } of get().sets) {
          if (isDiscarded && recordingId !== null) await repository.recordings.remove(recordingId);
        }
        summarise('saved');
      } catch (error) {
        summarise('failed');
        set({ problem: explainProblem(error, 'save') });
      }
    },
  };
}
