import { saveBlob } from './saveBlob';

const types = new Map([
  ['csv', 'text/csv'],
  ['ics', 'text/calendar'],
]);

/** Hands a text file to the person as a download; what it is follows from the end of its name. */
export function saveFile(fileName: string, text: string): void {
  const type = types.get(fileName.split('.').at(-1) ?? '') ?? 'application/json';
  saveBlob(fileName, new Blob([text], { type }));
}
