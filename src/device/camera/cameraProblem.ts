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
export const cameraWayOut = 'Or record with the device’s own camera app and open the file here.';

const causes: Record<CameraProblemKind, string> = {
  refused:
    'The camera was not allowed. Allow it for this page in the browser (the icon next to the address), and on a phone in ' +
    'the system’s settings for the browser, then try again.',
  none: 'No camera was found. Plug one in or switch it on, then try again.',
  'in-use':
    'The camera is in use or does not answer. Close other programs and pages that use it, end a call, then try again.',
  'insecure-page':
    'Browsers give the camera to secure pages only. Open this page with an address that starts with https:, then try ' +
    'again.',
  unplugged:
    'The camera has stopped: it was unplugged, taken by a call or another program, or no longer allowed. What was ' +
    'recorded up to here is kept. Give the camera back, then try again.',
  'impossible-wish': 'The chosen camera is not there any more. Choose another one.',
  unknown: 'The camera could not be started. Try again, or restart the browser.',
};

/** A camera that can't be used, with a sentence that says why and what to do. */
export class CameraProblem extends Error {
  /** @param detail  the browser's own message; null where it says nothing useful */
  constructor(
    readonly kind: CameraProblemKind,
    detail: string | null = null,
    options?: ErrorOptions,
  ) {
    super(`${causes[kind]}${detail === null ? '' : ` (${detail})`} ${cameraWayOut}`, options);
    this.name = 'CameraProblem';
  }
}
