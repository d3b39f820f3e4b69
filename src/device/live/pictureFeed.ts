/** One picture of the camera, scaled for the pose network. The receiver closes it. */
export interface LivePicture {
  /** When the camera took it, ms on the page's own clock (performance.now); strictly increasing. */
  timeMs: number;
  picture: ImageBitmap;
  /** px of the camera's picture for one px of this one. */
  scale: number;
  /** Size of the camera's picture as displayed, px. */
  widthPx: number;
  heightPx: number;
}

/** Pictures of a running camera, the newest one whenever it is asked for; what nobody asks for is dropped. */
export interface PictureFeed {
  /**
   * The newest picture that was not given before; waits for one where there is none yet.
   *
   * @returns null once the feed was closed or the camera has ended
   */
  next(): Promise<LivePicture | null>;
  /** Pictures that have come from the camera so far, given or dropped. */
  seen(): number;
  close(): void;
}
