import type { VideoWriter } from '../videos';
import type { VideoFolder } from './videoFolder';

/** What the page asks of the worker that writes one video; carried out in order. */
export interface WriterCalls extends VideoWriter {
  open(folder: VideoFolder, name: string): Promise<void>;
}
