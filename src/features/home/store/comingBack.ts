import { writeReminders } from '#documents/calendar/writeReminders';
import { cautionsOf } from '#documents/plan/cautions';
import type { PlanDocument } from '#documents/plan/planDocument';
import { planSteps, type SetStep } from '#documents/plan/planSteps';
import { notAsked } from '#documents/session/notAsked';
import { sessionVersion, type SessionDocument, type Silence } from '#documents/session/sessionDocument';
import { explainProblem } from '#shell/explainProblem';
import { silenceClosedName } from '#shell/receivedNotes';
import { message } from '#words/messages/message';
import type { SetResult } from '../guide/guideState';
import { brokenToday } from '../rules/leftToday';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp } from './homeApp';
import type { InterruptedView } from './homeState';
import type { HomeStorage } from './homeStorage';
import type { HomeStore } from './homeStore';
import { kneesNotAsked } from './kneesNotAsked';
import type { OpenChoice } from './openChoice';
import type { SetKeeper } from './setKeeper';

interface ComingBackParts {
  adapters: Pick<HomeAdapters, 'now' | 'newId' | 'saveFile'>;
  home: HomeStore;
  storage: Pick<HomeStorage, 'repository' | 'sessions' | 'listToday' | 'recoverInterrupted'>;
  keeper: Pick<SetKeeper, 'takeResults'>;
  openPlan: Pick<OpenChoice['openPlan'], 'kept'>;
  beginSession: () => void;
}

/** What is done with the plan of the day beside exercising in front of the camera. */
export function comingBack({
  adapters,
  home,
  storage,
  keeper,
  openPlan,
  beginSession,
}: ComingBackParts): Pick<
  HomeApp,
  'saveReminders' | 'sayDone' | 'continueToday' | 'answerSilence' | 'closeSilence'
> {
  const { get, set, enter } = home;
  const keptPlan = (planId: string) => get().plans?.find(({ id }) => id === planId);

  return {
    saveReminders(planId, perWeek, at) {
      const plan = keptPlan(planId);
      if (plan === undefined) return;
      const reminders = { id: planId, title: message('calendar.event'), perWeek, at, until: plan.reviewDate };
      adapters.saveFile('exercises.ics', writeReminders(reminders, adapters.now()));
    },
    sayDone(planId) {
      const plan = keptPlan(planId);
      const { step, storage: kept, today } = get();
      if (step !== 'plan' || plan === undefined || kept.state === 'blocked') return;
      const [latest] = get().plans ?? [];
      const steps = planSteps(plan.id === latest?.id ? get().today.items : plan.items);
      beginSession();
      const { askedAfter: visitId } = today;
      // Asked with the other questions, since nothing was asked before.
      const afterLast = visitId === null ? null : { visitId, worst: null, swelling: null };
      const painBySide = kneesNotAsked(plan.items);
      set({ plan, steps, painBySide, afterLast, isUnfilmed: true, sets: [], problem: null });
      keeper.takeResults(steps.map(doneUnfilmed));
      enter('after');
    },
    async continueToday() {
      const [plan] = get().plans ?? [];
      if (plan === undefined || get().step !== 'plan') return;
      const begun = brokenToday(await storage.sessions(), plan.id, adapters.now());
      const isOfToday = ({ sessionId, state }: InterruptedView) =>
        state === 'offered' && begun.some(({ id }) => id === sessionId);
      for (const { id } of get().interrupted.filter(isOfToday)) await storage.recoverInterrupted(id);
      const { left } = get().today;
      if (left !== null) await openPlan.kept(plan.id, false, { left: left.steps });
    },
    async answerSilence(planId, reason) {
      const plan = keptPlan(planId);
      const { silentSince: since } = get().today;
      if (plan === undefined || since === null) return;
      try {
        const at = adapters.now().toISOString();
        const { sessions } = await storage.repository;
        await sessions.save(silenceRecord(plan, { reason, since }, adapters.newId(), at));
        await storage.listToday();
      } catch (error) {
        set({ problem: explainProblem(error, 'save') });
      }
    },
    async closeSilence() {
      const { today } = get();
      const { silentSince: since } = today;
      if (since === null) return;
      set({ today: { ...today, silentSince: null } });
      const { notes } = await storage.repository;
      // What can't be kept is asked once more.
      await notes.write(silenceClosedName(since), adapters.now().toISOString()).catch(() => undefined);
    },
  };
}

/** A set as the plan has it; nobody counted or timed it. */
function doneUnfilmed({ item, itemIndex, side, number }: SetStep, stepIndex: number): SetResult {
  const prescribed = item.kind === 'hold' ? null : item.repetitions;
  const unseen = { counted: null, heldMs: null, cutShort: null, isRecorded: false };
  return { stepIndex, itemIndex, task: item.task, side, number, prescribed, ...unseen };
}

function silenceRecord(plan: PlanDocument, silence: Silence, id: string, at: string): SessionDocument {
  return {
    format: 'overfoot-visit',
    version: sessionVersion,
    id,
    startedAt: at,
    endedAt: at,
    patient: plan.patient,
    planId: plan.id,
    ...notAsked,
    painLimit: cautionsOf(plan).painLimit,
    painBefore: null,
    painAfter: null,
    effort: null,
    remark: '',
    silence,
    sets: [],
  };
}
