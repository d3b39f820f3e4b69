import { Problem } from '#core/problem';
import type { LibraryDocument } from '#documents/library/libraryDocument';
import { libraryKind } from '#documents/library/libraryKind';
import { readSender } from '#documents/parcel/parcelSender';
import { parseDocument } from '#documents/reading/readDocument';
import type { DeviceSigner } from '#shell/deviceSigner';
import { isSignedBy } from '#shell/signing';

/** Far more than a library within bounds takes, bytes. */
const largestBytes = 40_000_000;
const saveAgain = 'Ask your colleague to save it again.';

/** A library as a file: a line of JSON, and a line that signs it. */
export async function libraryFileOf(library: LibraryDocument, signer: DeviceSigner): Promise<string> {
  const line = JSON.stringify(library);
  return `${line}\n${JSON.stringify(await signer.sign(new TextEncoder().encode(line)))}\n`;
}

/**
 * Reads an untrusted file.
 *
 * @returns  the library, and the public key of the device that signed it
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export async function readLibraryFile(file: Blob): Promise<{ library: LibraryDocument; signer: string }> {
  if (file.size > largestBytes) throw new Problem('file', libraryKind.words.tooMuch);
  const [line = '', signature = ''] = (await file.text()).split('\n');
  const library = parseDocument(line, libraryKind);
  const sender = readSender(signature, saveAgain);
  if (sender === null || !(await isSignedBy(sender.key, sender.signature, new TextEncoder().encode(line))))
    throw new Problem('file', `It is not signed, or was changed after that. ${saveAgain}`);
  return { library, signer: sender.key };
}
