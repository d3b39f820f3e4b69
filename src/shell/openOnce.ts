/** Opens once for all who ask; after a failure it is tried again. */
export function openOnce<Opened>(open: () => Promise<Opened>): () => Promise<Opened> {
  let opened: Promise<Opened> | null = null;
  return () => {
    opened ??= open().catch((error: unknown) => {
      opened = null;
      throw error;
    });
    return opened;
  };
}
