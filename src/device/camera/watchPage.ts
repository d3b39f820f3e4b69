/** The part of the page that says whether it is visible; tests pass plain objects. */
export type SeenPage = Pick<Document, 'visibilityState' | 'addEventListener' | 'removeEventListener'>;

/**
 * Calls back when the page is hidden (false), for example by a call, another program or a locked screen, and
 * when it is back (true).
 *
 * @returns a function that stops listening
 */
export function watchPage(listener: (isVisible: boolean) => void, page: SeenPage = document): () => void {
  const tell = () => listener(page.visibilityState === 'visible');
  page.addEventListener('visibilitychange', tell);
  return () => page.removeEventListener('visibilitychange', tell);
}
