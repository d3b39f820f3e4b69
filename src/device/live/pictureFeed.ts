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

/** Pictures of a running camera, the newest one whenever it is requested; pictures not requested are dropped. */
export interface PictureFeed {
  /**
   * The newest picture not yet delivered; waits for one where there is none.
   *
   * @returns null once the feed is closed or the camera has ended
   */
  next(): Promise<LivePicture | null>;
  /** Pictures from the camera so far, delivered or dropped. */
  seen(): number;
  close(): void;
}
