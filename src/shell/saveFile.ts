import { saveBlob } from './saveBlob';

/** Hands a text file to the person as a download; what it is follows from the end of its name. */
export function saveFile(fileName: string, text: string): void {
  const type = fileName.endsWith('.csv') ? 'text/csv' : 'application/json';
  saveBlob(fileName, new Blob([text], { type }));
}
