import { lazy, useState, type ComponentType, type Context, type ReactNode } from 'react';

/** Opens a feature, and returns what puts it around a screen. */
type Opener = () => Promise<(screen: ReactNode) => ReactNode>;

/** The opener of a feature whose store screens find in a context. */
export function inContext<T>(Provider: Context<T | null>, open: () => Promise<T>): Opener {
  return async () => {
    const owner = await open();
    return (screen) => <Provider value={owner}>{screen}</Provider>;
  };
}

/**
 * A screen whose code, and the features it works with, are fetched when it is first shown, or ahead of that.
 *
 * What is here already is drawn at once: React keeps a screen that had to be waited for out of sight for 300 ms, however
 * short the wait.
 *
 * @param fetchScreen  imports the component
 * @param NotLoaded  replaces it if it can't be fetched
 * @param openers  of the features that the screen asks for
 */
export function lazyScreen<Props extends object = object>(
  fetchScreen: () => Promise<ComponentType<Props>>,
  NotLoaded: () => ReactNode,
  openers: readonly Opener[] = [],
) {
  let fetched: ComponentType<Props> | null = null;
  const fetchAll = async (): Promise<ComponentType<Props>> => {
    const [Screen, ...around] = await Promise.all([fetchScreen(), ...openers.map((open) => open())]);
    return (fetched ??= (props: Props) =>
      around.reduce<ReactNode>((inner, wrap) => wrap(inner), <Screen {...props} />));
  };
  const Awaited = lazy(async () => ({ default: await fetchAll().catch(() => NotLoaded) }));
  function LazyScreen(props: Props) {
    const [Ready] = useState(() => fetched);
    return Ready === null ? <Awaited {...props} /> : <Ready {...props} />;
  }
  return Object.assign(LazyScreen, {
    /** Fetches it before it is shown; what can't be fetched now is tried again when it is. */
    fetchAhead: () => void fetchAll().catch(() => undefined),
  });
}
