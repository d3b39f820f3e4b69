import { openBucket } from '../storageBuckets';

/** Where videos are files: a folder of the page's private file system, in a storage bucket where there is one. */
export interface VideoFolder {
  bucket: string | null;
  folder: string;
}

/** Name of the usual folder. */
export const videosFolder = 'videos';

/** Opens the folder, in the page and in the worker that writes; one that does not exist is made. */
export async function openVideoFolder({ bucket, folder }: VideoFolder): Promise<FileSystemDirectoryHandle> {
  const root = await (bucket === null ? navigator.storage : await openBucket(bucket)).getDirectory();
  return root.getDirectoryHandle(folder, { create: true });
}
