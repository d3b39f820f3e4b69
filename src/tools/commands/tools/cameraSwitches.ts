/**
 * Switches for a browser with a camera that is none: it shows pictures from a file, over and over. Whoever opens a page
 * in it still has to allow the camera.
 *
 * @param picturesPath  a file made by writeCameraFile
 */
export function cameraSwitches(picturesPath: string): string[] {
  return ['--use-fake-device-for-media-stream', `--use-file-for-fake-video-capture=${picturesPath}`];
}
