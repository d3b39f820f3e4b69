import type { Swelling } from '#core/programme/stageCourse';
import type { Side } from '#core/protocol/side';
import type { SignId } from '#core/safety/signs';
import { cautionsOf, painAdvice } from '#documents/plan/cautions';
import { isHolding } from '#documents/session/concernsOf';
import { longestText } from '#documents/session/sessionDocument';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp } from './homeApp';
import { partOf, type HomeStep } from './homeState';
import type { HomeStore } from './homeStore';
import { isPainAnswered } from './isPainAnswered';
import { kneesNotAsked } from './kneesNotAsked';
import type { OpenChoice } from './openChoice';
import type { PainWarnings } from './painWarnings';
import type { SessionSaver } from './sessionSaver';
import { withPain } from './withPain';

interface BeforeStartParts {
  adapters: Pick<HomeAdapters, 'now'>;
  home: HomeStore;
  choice: Pick<OpenChoice, 'openPlan' | 'keepChosen' | 'begin' | 'goOn' | 'signsAhead' | 'isPainSaid'>;
  warnings: PainWarnings;
  saver: SessionSaver;
  /** On to the camera, or to the exercise where no set needs one. */
  goOn: () => void;
  letCameraGo: () => void;
  /** Back to the choice; what was said is kept. */
  toStart: () => void;
  save: () => Promise<void>;
}

/**
 * What is asked before anything is done: the last time, warning signs, pain; where a plan was followed before, pain
 * first. Each answer is kept at once.
 */
export function beforeStart(
  parts: BeforeStartParts,
): Pick<
  HomeApp,
  | 'sayCleared'
  | 'sayUnseen'
  | 'goOnUnseen'
  | 'setConfirmed'
  | 'confirm'
  | 'setSign'
  | 'askAllSigns'
  | 'setLessSwollen'
  | 'noneOfThese'
  | 'back'
  | 'sayPainToday'
  | 'setPainBefore'
  | 'goOnFromPain'
  | 'stopBeforeStart'
> {
  const { adapters, home, choice, warnings, saver, goOn, letCameraGo, toStart, save } = parts;
  const { get, set, change, enter } = home;
  const isAt = (...steps: HomeStep[]) => steps.includes(get().step);
  const askPain = () => {
    const { painBefore } = get();
    enter('pain-before', { painWarning: painBefore === null ? null : warnings.of('before', painBefore) });
  };
  const askSigns = () => enter('check', choice.signsAhead(), { problem: null });
  const leavePain = (isTold: boolean) => {
    const state = get();
    if (state.step !== 'pain-before' || !isPainAnswered(state)) return;
    const { painWarning: warning } = state;
    if (warning !== null) {
      if (!warning.mayGoOn || !isTold) return;
      warnings.goOn(warning, adapters.now());
      saver.keep();
    }
    if (choice.isPainSaid()) choice.begin();
    else goOn();
  };

  return {
    sayCleared(who) {
      const state = get();
      const name = who.trim().slice(0, longestText.who);
      if (state.step !== 'last-time' || name === '') return;
      const at = adapters.now().toISOString();
      const settles = state.earlier.map(({ id }) => ({
        visitId: id,
        by: 'professional' as const,
        who: name,
        at,
      }));
      set({ settles });
      saver.keep();
      choice.goOn();
    },
    sayUnseen: () => change('last-time', { isUnseen: true }),
    goOnUnseen() {
      const { earlier } = partOf(get(), 'last-time');
      const isHeld = earlier.some(({ concerns }) => concerns.some(isHolding));
      if (isAt('last-time') && !isHeld) choice.goOn();
    },

    setConfirmed: (isConfirmed) => change('overview', { isConfirmed }),
    confirm() {
      const state = get();
      if (state.step !== 'overview' || !state.isConfirmed) return;
      choice.keepChosen();
      askSigns();
    },
    askAllSigns: () => change('check', { asked: 'all' }),
    setSign(sign) {
      const state = get();
      if (state.step !== 'check') return;
      const { asked, askedAfter, check, sign: before } = state;
      const taken = new Set(check?.takenBack);
      if (sign !== null) taken.delete(sign);
      else if (before !== null) taken.add(before);
      const signs = sign === null ? [] : [sign];
      set({
        check: { asked, signs, takenBack: [...taken] },
        endedBecause: sign === null ? null : { reason: 'sign', fell: null },
        afterLast:
          askedAfter === null ? null : { visitId: askedAfter, worst: null, swelling: swellingOf(sign) },
      });
      change('check', { sign });
      saver.keep();
    },
    setLessSwollen: (isLessSwollen) => change('check', { isLessSwollen }),
    noneOfThese(worst = null) {
      const state = get();
      if (state.step !== 'check' || state.sign !== null) return;
      const { asked, askedAfter: visitId, isLessSwollen } = state;
      const swelling = isLessSwollen ? ('less' as const) : ('same' as const);
      set({
        check: { asked, signs: [], takenBack: state.check?.takenBack ?? [] },
        afterLast: visitId === null ? null : { visitId, worst, swelling },
      });
      saver.keep();
      if (choice.isPainSaid()) goOn();
      else askPain();
    },

    back() {
      const isPainSaid = choice.isPainSaid();
      set({ problem: null });
      if (isAt('overview') || (isAt('last-time') && !isPainSaid)) enter('plan');
      else if (isAt('check') && !isPainSaid) enter('overview', { isConfirmed: true });
      else if (isAt('last-time', 'check')) askPain();
      else if (isAt('pain-before')) {
        if (isPainSaid) toStart();
        else askSigns();
      } else if (isAt('camera')) {
        letCameraGo();
        if (isPainSaid) askSigns();
        else askPain();
      }
    },

    async sayPainToday(score, side = null) {
      const state = get();
      const [plan] = state.plans ?? [];
      if (state.step !== 'plan' || state.isOpening || plan === undefined) return;
      const before = state.painToday.painBySide ?? kneesNotAsked(plan.items);
      const { painBySide, most } = withPain(before, 'before', side, score);
      const pain = { painBefore: most, painBySide };
      change('plan', { painToday: pain });
      // Too much in one knee is answered before the other is asked about.
      const isTooMuch = painAdvice('before', most, cautionsOf(plan)) !== null;
      if (!isTooMuch && !isPainAnswered(pain)) return;
      const goOnFromToday = () => {
        saver.keep();
        askPain();
        leavePain(false);
      };
      await choice.openPlan.kept(plan.id, false, { said: { pain, goOn: goOnFromToday } });
      // It could not be opened: the number can be chosen again.
      change('plan', { painToday: { painBefore: null, painBySide: null } });
    },

    setPainBefore(score: number, side: Side | null = null) {
      if (isAt('summary')) return;
      const { painBySide, most: painBefore } = withPain(get().painBySide, 'before', side, score);
      set({ painBefore, painBySide });
      change('pain-before', { painWarning: warnings.of('before', painBefore) });
      saver.keep();
    },
    goOnFromPain: (isTold = false) => leavePain(isTold),
    stopBeforeStart() {
      const state = get();
      if (state.step === 'pain-before' && state.painWarning !== null)
        set({ endedBecause: { reason: 'pain', fell: null } });
      if (isAt('check', 'pain-before') && get().endedBecause !== null) {
        enter('summary', { saving: 'failed' });
        void save();
      } else if (isAt('last-time', 'overview', 'check', 'pain-before', 'camera')) {
        letCameraGo();
        toStart();
      }
    },
  };
}

/** What a sign says of the swelling; null where it says nothing of it. */
function swellingOf(sign: SignId | null): Swelling | null {
  if (sign === 'swollen') return 'more';
  return sign === 'much-swollen' ? 'much-more' : null;
}
