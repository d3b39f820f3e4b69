import type { FrameSource } from '#device/frames/frameSource';
import { openFrameSource } from '#device/frames/openFrameSource';

/** Opens a file for a job, which learns when that began, and closes it afterwards. */
export async function withSource<Value>(
  file: File,
  job: (source: FrameSource, openedMs: number) => Promise<Value>,
): Promise<Value> {
  const openedMs = performance.now();
  const source = await openFrameSource(file);
  try {
    return await job(source, openedMs);
  } finally {
    source.close();
  }
}
