/** What a browser says about permissions; tests pass plain objects. */
type CameraPermissions = Pick<Permissions, 'query'>;

/**
 * Whether a camera opens without the person being asked; false where the browser does not say.
 *
 * @param permissions  null where the browser has none
 */
export async function isCameraAllowed(
  permissions: CameraPermissions | null = (navigator as Partial<Navigator>).permissions ?? null,
): Promise<boolean> {
  try {
    return (await permissions?.query({ name: 'camera' }))?.state === 'granted';
  } catch {
    return false; // Not every browser knows this name.
  }
}
