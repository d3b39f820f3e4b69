/**
 * Switches for a browser with a fake camera, which shows pictures from a file in a loop. A page in it still
 * needs permission to use the camera.
 *
 * @param picturesPath  a file made by writeCameraFile
 */
export function cameraSwitches(picturesPath: string): string[] {
  return ['--use-fake-device-for-media-stream', `--use-file-for-fake-video-capture=${picturesPath}`];
}
