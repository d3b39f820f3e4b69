import type { CameraFacing } from './camera';

/**
 * Which way a camera faces.
 *
 * @param label  the camera's own name; phones say it there
 * @param mode  what the system says, where it does
 * @returns null where neither says
 */
export function facingOf(label: string, mode?: string): CameraFacing | null {
  if (mode === 'user') return 'front';
  if (mode === 'environment') return 'back';
  if (/\b(back|rear)\b/i.test(label)) return 'back';
  return /\bfront\b/i.test(label) ? 'front' : null;
}
