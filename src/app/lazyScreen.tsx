import { lazy, type ComponentType, type ReactNode } from 'react';
import { FeatureProvider, type FeatureParts } from './PageContext';

type Openers = { [Name in keyof FeatureParts]?: () => Promise<FeatureParts[Name]> };

/**
 * A screen whose code, and the features it works with, are fetched when it is first shown.
 *
 * @param fetchScreen  imports the component
 * @param NotLoaded  stands in its place where it can't be fetched
 * @param openers  the features, by the names under which the screen asks for them
 */
export function lazyScreen<Props extends object = object>(
  fetchScreen: () => Promise<ComponentType<Props>>,
  NotLoaded: () => ReactNode,
  openers: Openers = {},
) {
  return lazy(async (): Promise<{ default: ComponentType<Props> }> => {
    try {
      const names = Object.keys(openers) as (keyof FeatureParts)[];
      const opening = names.map((name) => openers[name]!());
      const [Screen, ...opened] = await Promise.all([fetchScreen(), ...opening]);
      const parts: Partial<FeatureParts> = Object.fromEntries(names.map((name, i) => [name, opened[i]]));
      const Shown = (props: Props) => (
        <FeatureProvider parts={parts}>
          <Screen {...props} />
        </FeatureProvider>
      );
      return { default: Shown };
    } catch {
      return { default: NotLoaded };
    }
  });
}
