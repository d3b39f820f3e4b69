import { describe, expect, it, vi } from 'vitest';
import { createNavigation, type LeaveQuestion } from '#shell/navigation/createNavigation';
import type { ScreenName } from '#shell/navigation/place';
import { fakeHistory } from '../../../support/fakeHistory';

const question: LeaveQuestion = { title: 'Leave?', sentence: 'It is not kept.', leave: 'Leave' };

function open(state: unknown = null, canShow: (screen: ScreenName) => boolean = () => true) {
  const browser = fakeHistory(state);
  const navigation = createNavigation(browser.history, canShow);
  return { ...browser, navigation, screen: navigation.screen, state: navigation.store.getState };
}

describe('show(screen)', () => {
  it('moves, and the browser goes back and forward over what was shown', async () => {
    const { navigation, history, screen, state } = open();
    expect(screen()).toBe('start');
    expect(await navigation.show('sessions')).toBe(true);
    await navigation.show('review');
    expect(state()).toMatchObject({ screen: 'review', from: 'sessions' });
    history.go(-1);
    expect(state()).toMatchObject({ screen: 'sessions', from: 'start' });
    history.go(-1);
    expect(screen()).toBe('start');
    history.go(2);
    expect(screen()).toBe('review');
  });

  it('makes no entry for the screen that is there already', async () => {
    const { navigation, entries } = open();
    await navigation.show('start');
    expect(entries()).toHaveLength(1);
  });
});

describe('returnTo(screen)', () => {
  it('goes back where the screen was opened from there, and shows it else', async () => {
    const { navigation, at, screen } = open();
    await navigation.show('sessions');
    navigation.returnTo('start');
    expect([screen(), at()]).toEqual(['start', 0]);
    await navigation.show('sessions');
    await navigation.show('mirror');
    navigation.returnTo('start');
    expect([screen(), at()]).toEqual(['start', 3]);
  });
});

describe('the screen to open with', () => {
  it('is shown first, with the start one press away', async () => {
    const { history, entries, at } = fakeHistory(null);
    const navigation = createNavigation(history, () => true, 'home');
    expect(navigation.store.getState()).toMatchObject({ screen: 'home', from: null, index: 0 });
    navigation.returnTo('start');
    expect([navigation.screen(), at(), entries().length]).toEqual(['start', 1, 2]);
  });

  it('gives way to the place of a page that was reloaded', () => {
    const { history } = fakeHistory({ screen: 'plan', from: 'start', index: 2 });
    expect(createNavigation(history, () => true, 'home').screen()).toBe('plan');
  });
});

describe('a reload', () => {
  it('comes back to the same screen', () => {
    expect(open({ screen: 'sessions', from: 'start', index: 3 }).state()).toMatchObject({
      screen: 'sessions',
      from: 'start',
      index: 3,
    });
  });

  it('comes back to where a screen was opened from that can’t be shown again, else to the start', () => {
    const canShow = (screen: ScreenName) => screen !== 'review';
    expect(open({ screen: 'review', from: 'sessions', index: 3 }, canShow).screen()).toBe('sessions');
    expect(open({ screen: 'review', from: null, index: 0 }, canShow).screen()).toBe('start');
  });

  it.each([
    {},
    'sessions',
    7,
    { screen: 'nowhere', from: null, index: 0 },
    { screen: 'home', from: null, index: -1 },
    { screen: 'home', from: null, index: 2, depth: 'deep' },
  ])('begins at the start with what is no place of its own: %j', (state) => {
    expect(open(state).state()).toMatchObject({ screen: 'start', from: null, index: 0 });
  });
});

describe('guard(guard)', () => {
  async function guarded() {
    const opened = open();
    await opened.navigation.show('sessions');
    await opened.navigation.show('review');
    const confirmed = vi.fn();
    const guard = { question: (to: ScreenName | null) => (to === 'mirror' ? null : question), confirmed };
    opened.navigation.guard(guard);
    return { ...opened, confirmed };
  }

  it('asks before a move, which is made or dropped by the answer', async () => {
    const { navigation, screen, state, confirmed } = await guarded();
    const stayed = navigation.show('start');
    expect(screen()).toBe('review');
    expect(state().question).toEqual(question);
    navigation.answer(false);
    expect(await stayed).toBe(false);
    expect(state()).toMatchObject({ screen: 'review', question: null });
    expect(confirmed).not.toHaveBeenCalled();
    const left = navigation.show('start');
    navigation.answer(true);
    expect(await left).toBe(true);
    expect(screen()).toBe('start');
    expect(confirmed).toHaveBeenCalledTimes(1);
  });

  it('asks when the browser goes back, and keeps the entry until the answer', async () => {
    const { navigation, history, at, screen, state } = await guarded();
    history.go(-1);
    expect([screen(), at()]).toEqual(['review', 2]);
    expect(state().question).toEqual(question);
    navigation.answer(false);
    expect([screen(), at()]).toEqual(['review', 2]);
    history.go(-2);
    navigation.answer(true);
    expect([screen(), at()]).toEqual(['start', 0]);
    expect(state().question).toBeNull();
  });

  it('lets through what loses nothing or is decided', async () => {
    const { navigation, screen } = await guarded();
    await navigation.show('mirror');
    expect(screen()).toBe('mirror');
    await navigation.show('start', true);
    expect(screen()).toBe('start');
  });

  it('says whether closing the page would lose something', async () => {
    expect(open().navigation.holdsWork()).toBe(false);
    expect((await guarded()).navigation.holdsWork()).toBe(true);
  });
});

describe('openPage(back)', () => {
  /** The pages of a screen, each with a way back to the one before, as a component would show them. */
  async function openPages() {
    const opened = open();
    const { navigation } = opened;
    await navigation.show('home');
    let shown = 1;
    let close = navigation.openPage(null);
    const show = (page: number) => {
      shown = page;
      close();
      close = navigation.openPage(page === 1 ? null : () => show(page - 1));
    };
    return { ...opened, show, shown: () => shown };
  }

  it('has Back lead through the pages before it leaves the screen', async () => {
    const { history, screen, show, shown, at } = await openPages();
    show(2);
    show(3);
    expect(at()).toBe(3);
    history.go(-1);
    expect([screen(), shown()]).toEqual(['home', 2]);
    show(3);
    history.go(-1);
    history.go(-1);
    expect([screen(), shown(), at()]).toEqual(['home', 1, 1]);
    history.go(-1);
    expect([screen(), at()]).toEqual(['start', 0]);
  });

  it('does the same by pageBack()', async () => {
    const { navigation, show, shown, at } = await openPages();
    show(2);
    navigation.pageBack();
    expect([shown(), at()]).toEqual([1, 1]);
    navigation.pageBack();
    expect([shown(), at()]).toEqual([1, 1]);
  });

  it('passes over pages that were left in another way', async () => {
    const { history, screen, show } = await openPages();
    show(2);
    show(3);
    show(1);
    history.go(-1);
    expect(screen()).toBe('start');
  });

  it('makes an entry for a page after the first one was reached by Back', async () => {
    const { history, show, shown, at } = await openPages();
    show(2);
    history.go(-1);
    show(2);
    expect(at()).toBe(2);
    history.go(-1);
    expect(shown()).toBe(1);
  });

  it('stays on the page at Forward', async () => {
    const { history, screen, show, shown } = await openPages();
    show(2);
    history.go(-1);
    history.go(1);
    expect([screen(), shown()]).toEqual(['home', 1]);
  });

  it('lets returnTo() leave from any page', async () => {
    const { navigation, screen, show, at } = await openPages();
    show(2);
    show(3);
    navigation.returnTo('start');
    expect([screen(), at()]).toEqual(['start', 0]);
  });

  it('asks from a page what leaving would lose', async () => {
    const { navigation, history, screen, show, state } = await openPages();
    navigation.guard({ question: (to) => (to === 'home' ? null : question) });
    show(2);
    show(1);
    history.go(-1);
    expect(screen()).toBe('home');
    expect(state().question).toEqual(question);
    navigation.answer(true);
    expect(screen()).toBe('start');
  });

  it('keeps the depth over a reload', async () => {
    const { history, at, show } = await openPages();
    show(2);
    const reloaded = createNavigation(history, () => true);
    reloaded.openPage(null);
    reloaded.returnTo('start');
    expect([reloaded.screen(), at()]).toEqual(['start', 0]);
  });
});

describe('an entry of the browser’s own', () => {
  it('leaves the screen as it is, and Back leads on from there', async () => {
    const { navigation, pushForeign, history, screen } = open();
    await navigation.show('plan');
    pushForeign();
    expect(screen()).toBe('plan');
    history.go(-1);
    expect(screen()).toBe('plan');
    history.go(-1);
    expect(screen()).toBe('start');
  });
});

describe('a screen that can’t be shown any more', () => {
  it('is replaced by the one that it was opened from', async () => {
    let hasRecording = true;
    const { navigation, history, screen } = open(null, (name) => name !== 'review' || hasRecording);
    await navigation.show('sessions');
    await navigation.show('review');
    await navigation.show('start');
    hasRecording = false;
    history.go(-1);
    expect(screen()).toBe('sessions');
  });
});
