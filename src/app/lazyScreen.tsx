import { useEffect, useState, type ComponentType, type Context, type ReactNode } from 'react';
import { NotLoaded } from './NotLoaded';
import { OpeningScreen } from './OpeningScreen';

/** Opens a feature, and returns what puts it around a screen. */
type Opener = () => Promise<(screen: ReactNode) => ReactNode>;

/** The opener of a feature whose store screens find in a context. */
export function inContext<T>(Provider: Context<T | null>, open: () => Promise<T>): Opener {
  return async () => {
    const owner = await open();
    return (screen) => <Provider value={owner}>{screen}</Provider>;
  };
}

interface Around {
  /** Of the features that the screen asks for. */
  openers?: readonly Opener[];
  /** Stands there until everything is fetched. */
  Meanwhile?: () => ReactNode;
  /** Replaces it if it can't be fetched. */
  Instead?: () => ReactNode;
}

/**
 * A screen whose code, and the features it works with, are fetched when it is first shown, or ahead of that.
 *
 * It doesn't suspend: React keeps what had to be waited for out of sight for 300 ms, however short the wait.
 *
 * @param fetchScreen  imports the component
 */
export function lazyScreen<Props extends object = object>(
  fetchScreen: () => Promise<ComponentType<Props>>,
  { openers = [], Meanwhile = OpeningScreen, Instead = NotLoaded }: Around = {},
) {
  let fetched: ComponentType<Props> | null = null;
  const fetchAll = async (): Promise<ComponentType<Props>> => {
    const [Screen, ...around] = await Promise.all([fetchScreen(), ...openers.map((open) => open())]);
    return (fetched ??= (props: Props) =>
      around.reduce<ReactNode>((inner, wrap) => wrap(inner), <Screen {...props} />));
  };
  function LazyScreen(props: Props) {
    const [Ready, setReady] = useState(() => fetched);
    useEffect(() => {
      if (Ready !== null) return;
      let isShown = true;
      void fetchAll()
        .catch(() => Instead)
        .then((Screen: ComponentType<Props>) => isShown && setReady(() => Screen));
      return () => {
        isShown = false;
      };
    }, [Ready]);
    return Ready === null ? <Meanwhile /> : <Ready {...props} />;
  }
  return Object.assign(LazyScreen, {
    /** Fetches it before it is shown; what can't be fetched now is tried again when it is. */
    fetchAhead: () => void fetchAll().catch(() => undefined),
  });
}
