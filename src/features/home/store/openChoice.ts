import { Problem } from '#core/problem';
import { storageProblem } from '#device/storage/storageProblem';
import { freeRecording, type FreeChoice } from '#documents/plan/freeRecording';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument, PlanItem } from '#documents/plan/planDocument';
import { readPlanLink } from '#documents/plan/planLink';
import { largestPlanBytes } from '#documents/plan/planRanges';
import { planSteps, type SetStep } from '#documents/plan/planSteps';
import type { StagedSession } from '#documents/programme/stageCourseOf';
import { plainName } from '#documents/schema/plainName';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { explainProblem } from '#shell/explainProblem';
import { message } from '#words/messages/message';
import { itemsNow, stepAtHome } from '../rules/stepAtHome';
import type { HomeAdapters } from './homeAdapters';
import { partOf, type SaidPain } from './homeState';
import type { HomeStorage } from './homeStorage';
import type { HomeStore } from './homeStore';
import { keysBefore } from './keysBefore';
import { kneesNotAsked } from './kneesNotAsked';
import { lookBack, type LookBack } from './lookBack';
import { readStaged } from './readStaged';
import { createShownPlan } from './shownPlan';

interface ChoiceParts {
  adapters: HomeAdapters;
  home: HomeStore;
  storage: HomeStorage;
  /** Starts a separate session. */
  beginSession: () => void;
}

export type OpenChoice = ReturnType<typeof openChoice>;

/** What is said on the first page of the day, before its plan is opened, and where that leads. */
export interface SaidFirst {
  pain: SaidPain;
  goOn: () => void;
}

interface Chosen {
  earlierKeys: readonly string[] | null;
  isKnown: boolean;
  said: SaidFirst | null;
  /** What is to be done, where it is not all of the plan. */
  left: readonly SetStep[] | null;
}

interface Ahead extends Found, Omit<Chosen, 'said' | 'left'> {
  isPainSaid: boolean;
  /** Whether all of the plan is to be done. */
  isWhole: boolean;
}

/** What earlier sessions mean for the chosen plan. */
interface Found extends LookBack {
  /** Its items as they stand. */
  now: readonly PlanItem[];
  staged: readonly StagedSession[];
}

const firstTime: LookBack = { earlier: [], asked: 'all', askedAfter: null };
const nothingSaid = {
  stepped: [],
  check: null,
  afterLast: null,
  wentOnAbove: [],
  endedBecause: null,
  settles: [],
};

/** The ways to choose what is done: a plan, or a recording without one. */
export function openChoice({ adapters, home, storage, beginSession }: ChoiceParts) {
  const { get, set, change, enter } = home;
  /** Incremented with every choice: a plan that opens late does not take the place of a later one. */
  let turn = 0;

  /** The plan being viewed; it is not saved before somebody accepts it. */
  let unkept: PlanDocument | null = null;
  const shown = createShownPlan(storage.repository);
  /** The plan of a link that a passphrase opens. */
  let sealed: Uint8Array<ArrayBuffer> | null = null;

  /** Null where nothing can be opened, which is told when it is used. */
  const openedRepository = () =>
    adapters.openRepository().then(
      ({ repository }) => repository,
      () => null,
    );

  /** What can't be listed keeps nobody from exercising. */
  const look = async (plan: PlanDocument | null): Promise<Found> => {
    try {
      const repository = await openedRepository();
      const sessions = repository === null ? [] : await storage.sessions();
      const back = lookBack(plan, sessions, adapters.now());
      if (plan === null || repository === null) return { ...back, now: plan?.items ?? [], staged: [] };
      const staged = await readStaged(plan, sessions, repository.recordings);
      return { ...back, now: itemsNow(plan, sessions), staged };
    } catch {
      return { ...firstTime, now: plan?.items ?? [], staged: [] };
    }
  };

  /** What the chosen plan asks of the pages that follow. */
  let ahead: Ahead = {
    ...{ ...firstTime, now: [], staged: [] },
    ...{ earlierKeys: null, isKnown: false, isPainSaid: false, isWhole: false },
  };
  const signsAhead = () => ({ asked: ahead.asked, askedAfter: ahead.askedAfter });
  /** What a plan asks for is shown before its first session, and afterwards to those who want to read it. */
  const goOn = () => {
    if (ahead.isKnown) enter('check', signsAhead());
    else enter('overview', { earlierKeys: ahead.earlierKeys });
  };
  const begin = () => {
    const { earlier } = ahead;
    if (earlier.length > 0 && get().settles.length === 0) enter('last-time', { earlier });
    else goOn();
  };

  const choose = (
    plan: PlanDocument | null,
    items: readonly PlanItem[],
    back: Found,
    { earlierKeys = null, isKnown = false, said = null, left = null }: Partial<Chosen> = {},
  ) => {
    const { storage: kept } = get();
    if (kept.state === 'blocked') {
      return set({ problem: { title: message('trouble.cannot-start'), sentence: kept.sentence } });
    }
    const steps = left ?? planSteps(items);
    const isFollowed = isKnown && back.asked === 'new';
    beginSession();
    const isPainSaid = isFollowed && said !== null;
    ahead = { ...back, earlierKeys, isKnown: isFollowed, isPainSaid, isWhole: left === null };
    const pain = said?.pain ?? { painBefore: null, painBySide: kneesNotAsked(items) };
    set({ ...nothingSaid, ...pain, plan, steps, sets: [] });
    if (isFollowed && said !== null) said.goOn();
    else begin();
  };
  /** @param readIt  gives null where a passphrase is to be asked for first */
  const open = async (
    readIt: () => Promise<string | PlanDocument | null>,
    isKept: boolean,
    chosen: Partial<Chosen> = {},
  ) => {
    if (get().step !== 'plan') return;
    const mine = ++turn;
    change('plan', { isOpening: true });
    set({ problem: null });
    try {
      const found = await readIt();
      if (found === null) {
        if (mine === turn) change('plan', { isSealed: true });
        return;
      }
      const read = typeof found === 'string' ? parsePlan(found) : found;
      const plan = { ...read, patient: plainName(read.patient) };
      const earlierKeys = isKept ? null : await keysBefore(plan, await openedRepository());
      const back = await look(plan);
      await adapters.language.follow(plan.language);
      if (mine !== turn) return;
      choose(plan, back.now, back, { ...chosen, earlierKeys });
      unkept = isKept ? null : plan;
      const isAccepted = get().plans?.some((one) => JSON.stringify(one) === JSON.stringify(plan));
      if (!isKept && !isAccepted) void shown.keep(plan);
    } catch (error) {
      if (mine === turn) set({ problem: explainProblem(error, 'open') });
    } finally {
      if (mine === turn) change('plan', { isOpening: false });
    }
  };

  return {
    openPlan: {
      fromFile: (file: File) =>
        open(() => {
          if (file.size > largestPlanBytes) {
            throw new Problem('plan', message('plan-trouble.too-large'));
          }
          return file.text();
        }, false),
      fromLink(fragment: string) {
        // Another plan is only shown: nothing was said or done yet.
        if (get().step === 'overview') enter('plan', {}, { problem: null });
        return open(async () => {
          const link = readPlanLink(fragment);
          if ('plan' in link) return link.plan;
          sealed = link.sealed;
          return null;
        }, false);
      },
      sealed: (passphrase: string) =>
        open(async () => {
          if (sealed === null) return null;
          const { unsealPlan } = await import('#shell/sealedPlan'); // Few links are sealed.
          return unsealPlan(sealed, passphrase);
        }, false),
      /** Goes on where a plan was shown when the page was closed; does nothing where something else was chosen. */
      async shown() {
        if (partOf(get(), 'plan').isOpening) return;
        const before = turn;
        const plan = await shown.find();
        if (plan !== null && turn === before) await open(() => Promise.resolve(plan), false);
      },
      example: () => open(adapters.fetchExamplePlan, true),
      /**
       * @param said  what was said already; left out where nothing was
       * @param left  what is to be done; left out where it is all of the plan
       */
      kept: (
        id: string,
        isToRead: boolean,
        { said = null, left = null }: Partial<Pick<Chosen, 'said' | 'left'>> = {},
      ) =>
        open(
          async () => {
            const text = await (await storage.repository).plans.find(id);
            if (text === null) throw storageProblem('missing');
            return text;
          },
          true,
          { isKnown: !isToRead, said, left },
        ),
    },
    /** Saves the accepted plan; one that can't be saved is opened from its file or link the next time. */
    keepChosen() {
      const plan = unkept;
      unkept = null;
      if (plan === null) return;
      void shown.forget();
      if (plan.returnKeys.length > 0) void adapters.prepareSigning(plan.id);
      void storage.repository
        .then((kept) => kept.plans.save(plan.id, JSON.stringify(plan)))
        .catch(() => undefined);
    },
    async startFree(choice: FreeChoice) {
      if (get().step !== 'plan') return;
      const mine = ++turn;
      unkept = null;
      change('plan', { isOpening: false });
      set({ problem: null });
      const back = await look(null);
      if (mine === turn) choose(null, [freeRecording(choice)], back);
    },
    /** To what was said the last time where nobody has settled it, otherwise as goOn(). */
    begin,
    goOn,
    /** Whether the chosen plan was followed here before, and is not to be read again. */
    isKnown: () => ahead.isKnown,
    /** Whether the session began with how much it hurts. */
    isPainSaid: () => ahead.isPainSaid,
    /**
     * Changes what is to be done as the plan allows it, once it is known how the knee was after the last time.
     *
     * @param session  the one that begins
     */
    stepPlan(session: SessionDocument) {
      const { plan } = get();
      if (plan === null || !ahead.isWhole || plan.autoStep !== 'within-plan') return;
      const begun = { ...session, settlement: null, sets: [] };
      const { items, steps } = stepAtHome(plan, ahead.now, [...ahead.staged, begun], adapters.now());
      set({ steps: planSteps(items), stepped: steps });
    },
    /** What the page of the warning signs asks. */
    signsAhead,
  };
}
