import { strFromU8 } from 'fflate';

/** A line, and where what follows it begins. */
export interface FirstLine {
  line: string;
  endBytes: number;
}

/**
 * The first line of a file, and where what follows it begins; null where there is none within the bound. No more than
 * the bound is read.
 */
export async function firstLine(blob: Blob, boundBytes: number): Promise<FirstLine | null> {
  const head = new Uint8Array(await blob.slice(0, boundBytes).arrayBuffer());
  const end = head.indexOf('\n'.charCodeAt(0));
  return end < 0 ? null : { line: strFromU8(head.subarray(0, end)), endBytes: end + 1 };
}
