/** What the page asks of the worker that writes one video; answered in order by a message with the same id. */
export type WriterRequest =
  | { id: number; open: { folder: string; name: string } }
  | { id: number; write: Blob }
  | { id: number; close: true };

/** The error is null where all went well; DOMExceptions lose their name in transit, so it is sent separately. */
export interface WriterAnswer {
  id: number;
  error: { name: string; message: string } | null;
}
