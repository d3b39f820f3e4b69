import type { HomeState } from '../store/homeState';

/** Whether the picture is shown as a mirror does: of a camera that looks away from the screen, it is not. */
export function isShownMirrored({ camera }: Pick<HomeState, 'camera'>): boolean {
  return camera.state !== 'on' || camera.isMirrored;
}
