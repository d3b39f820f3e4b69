import { message } from '#words/messages/message';

export const cameraProblemKinds = [
  'refused',
  'none',
  'in-use',
  'insecure-page',
  'unplugged',
  'impossible-wish',
  'unknown',
] as const;
export type CameraProblemKind = (typeof cameraProblemKinds)[number];

/** The way that always works: nothing in the page depends on where a video was recorded. */
export function cameraWayOut(): string {
  return message('camera-trouble.way-out');
}

/** A camera that can't be used, with a sentence that says why and what to do. */
export class CameraProblem extends Error {
  /** @param detail  the browser's own message; null where it says nothing useful */
  constructor(
    readonly kind: CameraProblemKind,
    detail: string | null = null,
    options?: ErrorOptions,
  ) {
    super(
      `${message(`camera-trouble.${kind}`)}${detail === null ? '' : ` (${detail})`} ${cameraWayOut()}`,
      options,
    );
    this.name = 'CameraProblem';
  }
}
