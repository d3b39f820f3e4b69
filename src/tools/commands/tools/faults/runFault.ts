import type { Browser } from '@playwright/test';
import { openFaultDevice, type FaultDevice, type Kept } from './faultDevice';

/** One fault that is put into a running program. */
export interface Fault {
  name: string;
  /** What the person must be told; null where the program goes on without a word. */
  says: RegExp | null;
  /** Whether a set is done before a staged camera. */
  hasCamera?: boolean;
  /** Whether it stops the browser, so that it needs one of its own. */
  stopsBrowser?: boolean;
  /** How long the search for joints takes for each of the camera's or a file's pictures, ms. */
  tookMs?: number;
  /** Puts it in. @returns  the sentence that was shown; null where there was none */
  put(device: FaultDevice): Promise<string | null>;
  /** What may be another one afterwards, or gone, since the person asked for it or the fault itself changed it. */
  mayChange?: (key: string, device: FaultDevice) => boolean;
  /** What has to be true of what is kept afterwards besides. */
  holds?: (after: Kept, before: Kept) => boolean;
}

export interface FaultResult {
  name: string;
  /** Whether nothing was lost, and the person was told what had to be told. */
  survived: boolean;
  /** Things that were kept before and are not, or not whole, afterwards. */
  lost: number;
  sentence: string | null;
}

/** Puts a fault into a device of its own, and compares what is kept before and afterwards. */
export async function runFault(fault: Fault, browser: Browser, url: string): Promise<FaultResult> {
  const open = () => openFaultDevice(browser, url, fault);
  // On a busy machine its storage may not answer in time.
  const device = await open().catch(open);
  try {
    const before = await device.kept();
    let sentence: string | null;
    let isPut = true;
    try {
      sentence = await fault.put(device);
    } catch (error) {
      isPut = false;
      sentence = `The fault ended in: ${String(error)}`;
    }
    // What can't be read any more is lost.
    const after = await device.kept().catch((): Kept => ({}));
    const lost = Object.keys(before).filter(
      (key) => after[key] !== before[key] && fault.mayChange?.(key, device) !== true,
    ).length;
    const isTold = fault.says === null ? sentence === null : fault.says.test(sentence ?? '');
    const holds = fault.holds?.(after, before) ?? true;
    return { name: fault.name, survived: isPut && lost === 0 && isTold && holds, lost, sentence };
  } finally {
    await device.context.close();
  }
}
