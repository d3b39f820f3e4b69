import { createStore } from 'zustand/vanilla';

/** Errors that nobody expected, wherever they happened; null where there is none to tell of. */
export const troubles = createStore<{ error: { thrown: unknown } | null }>(() => ({ error: null }));

/** Listens for errors that nothing catches. Those of browser extensions, and work that was cancelled, are none. */
export function watchTroubles(scope: Pick<Window, 'addEventListener'>, origin: string): void {
  const tell = (thrown: unknown) => {
    if (!isCancelled(thrown)) troubles.setState({ error: { thrown } });
  };
  scope.addEventListener('error', (event) => {
    // Without an error it is a notice of the browser's layout, or a script from elsewhere.
    if (event.error !== null && event.error !== undefined && event.filename.startsWith(origin))
      tell(event.error);
  });
  scope.addEventListener('unhandledrejection', (event) => tell(event.reason));
}

function isCancelled(thrown: unknown): boolean {
  return thrown instanceof DOMException && thrown.name === 'AbortError';
}
