/** The part of the page that tells whether it is seen; tests hand in plain objects. */
export type SeenPage = Pick<Document, 'visibilityState' | 'addEventListener' | 'removeEventListener'>;

/**
 * Hears when the page is hidden (false), as by a call, another program or a locked screen, and when it is back (true).
 *
 * @returns the way to stop listening
 */
export function watchPage(listener: (isVisible: boolean) => void, page: SeenPage = document): () => void {
  const tell = () => listener(page.visibilityState === 'visible');
  page.addEventListener('visibilitychange', tell);
  return () => page.removeEventListener('visibilitychange', tell);
}
