import { lazy, type ComponentType, type Context, type ReactNode } from 'react';

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
 * A screen whose code, and the features it works with, are fetched when it is first shown.
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
  const fetchAll = () => Promise.all([fetchScreen(), ...openers.map((open) => open())]);
  const screen = lazy(async (): Promise<{ default: ComponentType<Props> }> => {
    try {
      const [Screen, ...around] = await fetchAll();
      return {
        default: (props: Props) =>
          around.reduce<ReactNode>((inner, wrap) => wrap(inner), <Screen {...props} />),
      };
    } catch {
      return { default: NotLoaded };
    }
  });
  return Object.assign(screen, {
    /** Fetches it before it is shown; what can't be fetched now is tried again when it is. */
    fetchAhead: () => void fetchAll().catch(() => undefined),
  });
}
