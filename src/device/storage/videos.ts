/** A video being written, piece by piece. */
export interface VideoWriter {
  /**
   * Appends a piece; pieces are written in the order of the calls.
   *
   * @returns resolves once the piece can't be lost by closing the tab or a dead battery
   * @throws StorageProblem  'full', ...; what was written before stays
   */
  write(chunk: Blob): Promise<void>;
  /** Ends the writing; the video can be read from then on. A second call does nothing. */
  close(): Promise<void>;
}

/** Videos by file name. */
export interface Videos {
  /** Begins a video; one of the same name is overwritten. */
  create(name: string): Promise<VideoWriter>;
  /** The video as a file, or null where there is none; one whose writing was cut off is returned as far as it got. */
  read(name: string): Promise<File | null>;
  /** Removing what is not there is not an error. */
  remove(name: string): Promise<void>;
  list(): Promise<{ name: string; bytes: number }[]>;
}

/** Writes a whole video. */
export async function writeVideo(videos: Pick<Videos, 'create'>, name: string, video: Blob): Promise<void> {
  const writer = await videos.create(name);
  try {
    await writer.write(video);
  } finally {
    await writer.close();
  }
}

/** Type of a video by its file extension. */
export function videoType(name: string): string {
  return name.endsWith('.mp4') ? 'video/mp4' : 'video/webm';
}

/** File name of a video, such as a set's by its id, with the extension of its type. */
export function videoName(stem: string, mimeType: string): string {
  return `${stem}.${mimeType.startsWith('video/mp4') ? 'mp4' : 'webm'}`;
}
