import type { BrowserHistory } from './createNavigation';

/** The window's history; the address stays as it is. */
export function browserHistory(): BrowserHistory {
  return {
    state: () => history.state as unknown,
    push: (place) => history.pushState(place, ''),
    replace: (place) => history.replaceState(place, ''),
    go: (delta) => history.go(delta),
    onMove: (listener) => addEventListener('popstate', listener),
  };
}
