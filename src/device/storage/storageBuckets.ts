/** Part of the Storage Buckets API (a draft of the WICG, in Chromium since version 122). */
export interface StorageBucket {
  readonly indexedDB: IDBFactory;
  getDirectory(): Promise<FileSystemDirectoryHandle>;
  estimate(): Promise<StorageEstimate>;
  persist(): Promise<boolean>;
}

interface StorageBuckets {
  open(name: string, options?: { durability: 'strict' | 'relaxed' }): Promise<StorageBucket>;
  keys(): Promise<string[]>;
  delete(name: string): Promise<void>;
}

/** The browser's buckets; null where it has none. */
export function storageBuckets(): StorageBuckets | null {
  return (navigator as { storageBuckets?: StorageBuckets }).storageBuckets ?? null;
}

/** A bucket whose writes reach the disk before they are reported as done. */
export async function openBucket(name: string): Promise<StorageBucket> {
  const buckets = storageBuckets();
  if (buckets === null) throw new DOMException('no storage buckets', 'NotSupportedError');
  return buckets.open(name, { durability: 'strict' });
}
