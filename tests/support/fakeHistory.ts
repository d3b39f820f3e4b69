import type { BrowserHistory } from '#shell/navigation/createNavigation';

/** A browser's history as a plain object; `go` is what Back and Forward do, and moves at once. */
export function fakeHistory(state: unknown = null) {
  const entries: unknown[] = [state];
  let at = 0;
  let listener: () => void = () => undefined;
  const history: BrowserHistory = {
    state: () => entries[at],
    push: (place) => void entries.splice(++at, Infinity, place),
    replace: (place) => void (entries[at] = place),
    go(delta) {
      if (entries[at + delta] === undefined) return;
      at += delta;
      listener();
    },
    onMove: (next) => (listener = next),
  };
  /** A link to another part of the address, as a person may press it. */
  const pushForeign = () => {
    entries.splice(++at, Infinity, null);
    listener();
  };
  return { history, pushForeign, entries: () => entries, at: () => at };
}
