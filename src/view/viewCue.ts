/** One way of telling how far the body is turned from the camera, read off the recording itself. */
export interface ViewCue {
  name: 'thighs' | 'feet' | 'stance-foot' | 'free-shank' | 'told-to-face-the-camera';
  /** Positive = the body's front points to the picture's right, degrees. */
  yawDeg: number;
  /** How far off such a reading usually is, degrees (one standard deviation). */
  sdDeg: number;
}
