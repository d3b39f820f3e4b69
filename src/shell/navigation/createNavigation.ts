import { createStore, type StoreApi } from 'zustand/vanilla';
import { parsePlace, type Place, type ScreenName } from './place';

/** What would be lost or ended by leaving, to be confirmed first. */
export interface LeaveQuestion {
  title: string;
  sentence: string;
  /** On the button that leaves. */
  leave: string;
}

/** Says what leaving a screen would lose. */
export interface LeaveGuard {
  /**
   * @param to  where it would lead; null where the page is closed or reloaded
   * @returns null where nothing would be lost
   */
  question(to: ScreenName | null): LeaveQuestion | null;
  /** Called once leaving was confirmed. */
  confirmed?(): void;
}

export interface NavigationState extends Place {
  /** To be answered before anything moves; null where nothing is asked. */
  question: LeaveQuestion | null;
}

/** The browser's history, as far as it is used; tests hand in a plain object. */
export interface BrowserHistory {
  state: () => unknown;
  push: (place: Place) => void;
  replace: (place: Place) => void;
  go: (delta: number) => void;
  /** Called when the browser has moved to another entry. */
  onMove: (listener: () => void) => void;
}

/** Which screen is shown. Every move is an entry of the browser's history, so Back, Forward and a reload work. */
export interface Navigation {
  readonly store: StoreApi<NavigationState>;
  screen(): ScreenName;
  /**
   * Shows a screen; asks first where something would be lost.
   *
   * @param isDecided  where nothing needs to be asked
   * @param about  id of whom or what it is about
   * @returns whether it was shown, once that is answered
   */
  show(screen: ScreenName, isDecided?: boolean, about?: string): Promise<boolean>;
  /** As show(), but goes back where the current screen was opened from that one. */
  returnTo(screen: ScreenName, isDecided?: boolean): void;
  /**
   * A page of the screen is shown. Back leads one page back before it leaves the screen.
   *
   * @param back  shows the page before; null on the screen's first page
   * @returns to be called when the page is no longer shown
   */
  openPage(back: (() => void) | null): () => void;
  /** One page back within the screen, as the browser's Back. */
  pageBack(): void;
  guard(guard: LeaveGuard): void;
  /** Asks about something else that would be lost; what was asked before counts as 'stay'. @returns whether it may be */
  ask(question: LeaveQuestion): Promise<boolean>;
  answer(isLeaving: boolean): void;
  /** Whether closing the page now would lose something. */
  holdsWork(): boolean;
}

/**
 * @param canShow  whether a screen has what it shows just now: a review needs a recording
 * @param opening  shown first where the page was not reloaded
 */
export function createNavigation(
  history: BrowserHistory,
  canShow: (screen: ScreenName) => boolean,
  opening: ScreenName = 'start',
): Navigation {
  const guards: LeaveGuard[] = [];
  const kept = parsePlace(history.state());
  const first =
    kept === null
      ? { screen: opening, from: null, about: null, index: 0, depth: 0 }
      : restored(kept, canShow);
  history.replace(first);
  const store = createStore<NavigationState>(() => ({ ...first, question: null }));
  const { getState: get, setState: set } = store;
  let pending: { go: () => void; settle: (isLeaving: boolean) => void } | null = null;
  /**
   * Where the browser is being sent back to, so that the move is not mistaken for the user's; null where it
   * is not.
   */
  let sentTo: number | null = null;
  /** Whether the person's next move was confirmed already. */
  let isConfirmed = false;
  /** Shows the page before the one that is shown; null where that is the screen's first. */
  let showPageBefore: (() => void) | null = null;
  /** Whether the next page is shown because of Back, and has its entry already. */
  let isPageBefore = false;

  const place = (): Place => {
    const { screen, from, about, index, depth } = get();
    return { screen, from, about, index, depth };
  };
  /** Goes at once, or asks first; what was asked before counts as 'stay'. */
  const leave = (to: ScreenName, go: () => void): Promise<boolean> => {
    answer(false);
    const question = guards.map((guard) => guard.question(to)).find((one) => one !== null) ?? null;
    if (question === null) {
      go();
      return Promise.resolve(true);
    }
    return new Promise((settle) => {
      pending = { go, settle };
      set({ question });
    });
  };
  const answer = (isLeaving: boolean) => {
    if (pending === null) return;
    const { go, settle } = pending;
    pending = null;
    set({ question: null });
    if (isLeaving) {
      guards.forEach((guard) => guard.confirmed?.());
      go();
    }
    settle(isLeaving);
  };
  const push = (screen: ScreenName, about: string | null = null) => {
    const current = place();
    const next: Place = { screen, from: current.screen, about, index: current.index + 1, depth: 0 };
    history.push(next);
    set(next);
  };

  history.onMove(() => {
    const current = place();
    const next = parsePlace(history.state());
    if (next === null) {
      // An entry of the browser's own, such as another fragment in the address: the screen stays.
      const here: Place = { ...current, index: current.index + 1 };
      history.replace(here);
      return set(here);
    }
    if (sentTo === next.index) {
      sentTo = null;
      return;
    }
    const to = restored(next, canShow);
    if (to.screen === current.screen && to.about === current.about && to.depth < current.depth) {
      set(to);
      // Entries of pages that were left in another way are passed over.
      if (showPageBefore === null) return history.go(-1);
      isPageBefore = true;
      return showPageBefore();
    }
    if (isConfirmed || to.screen === current.screen) {
      isConfirmed = false;
      if (to !== next) history.replace(to);
      return set(to);
    }
    const delta = next.index - current.index;
    let isAsking = false;
    void leave(to.screen, () => {
      if (isAsking) {
        isConfirmed = true;
        history.go(delta);
        return;
      }
      if (to !== next) history.replace(to);
      set(to);
    });
    isAsking = get().question !== null;
    if (!isAsking) return;
    // The browser has moved already: it is sent back until the question is answered.
    sentTo = current.index;
    history.go(-delta);
  });

  return {
    store,
    screen: () => get().screen,
    show(screen, isDecided = false, about) {
      if (screen === get().screen && (about ?? null) === get().about) return Promise.resolve(true);
      if (!isDecided) return leave(screen, () => push(screen, about));
      answer(false);
      push(screen, about);
      return Promise.resolve(true);
    },
    returnTo(screen, isDecided = false) {
      if (screen === get().screen) return;
      const go = () => {
        const { from, index, depth } = get();
        if (from !== screen || index <= depth) return push(screen);
        isConfirmed = true;
        history.go(-1 - depth);
      };
      if (!isDecided) return void leave(screen, go);
      answer(false);
      go();
    },
    openPage(back) {
      if (back !== null && !isPageBefore) {
        const current = place();
        const next: Place = { ...current, index: current.index + 1, depth: current.depth + 1 };
        history.push(next);
        set(next);
      }
      isPageBefore = false;
      showPageBefore = back;
      return () => {
        if (showPageBefore === back) showPageBefore = null;
      };
    },
    pageBack() {
      if (get().depth > 0) history.go(-1);
      else showPageBefore?.();
    },
    ask(question) {
      answer(false);
      return new Promise((settle) => {
        pending = { go: () => undefined, settle };
        set({ question });
      });
    },
    guard: (guard) => void guards.push(guard),
    answer,
    holdsWork: () => guards.some((guard) => guard.question(null) !== null),
  };
}

/** The place itself where its screen can be shown; else the one that it was opened from, or the start. */
function restored(place: Place, canShow: (screen: ScreenName) => boolean): Place {
  if (canShow(place.screen)) return place;
  const { from, index } = place;
  return { screen: from !== null && canShow(from) ? from : 'start', from, about: null, index, depth: 0 };
}
