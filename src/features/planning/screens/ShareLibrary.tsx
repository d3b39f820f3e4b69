import { Button, FileTrigger } from 'react-aria-components';
import type { ComparedEntry } from '#documents/library/compareLibraries';
import { keyOf, type LibraryKind } from '#documents/library/libraryDocument';
import { KeyWords } from '#ui/components/KeyWords';
import { exerciseName } from '#words/exerciseWords';
import { useLibrary, useLibraryState } from '../libraryContext';

const kindWords: Record<LibraryKind, string> = {
  exercises: 'own exercise',
  texts: 'words to patients',
  limits: 'first limits of',
  templates: 'template',
  stages: 'stages of',
};

const standingWords: Record<Exclude<ComparedEntry['standing'], 'same'>, string> = {
  new: 'New',
  newer: 'Changed later there, and taken in',
  older: 'Different there; the one here was changed later, and stays',
  'out-here': 'Taken out here later, and stays out',
  'out-there': 'Taken out there later, and so here as well',
};

/** Of which the one there can be taken all the same. */
const staying = new Set<ComparedEntry['standing']>(['older', 'out-here']);
/** With which something changes here. */
const takenIn = new Set<ComparedEntry['standing']>(['new', 'newer', 'out-there']);

/** Saves the library for colleagues, and takes theirs in after a look at what it would change. */
export function ShareLibrary() {
  const library = useLibrary();
  const found = useLibraryState((state) => state.found);
  const savedBy = useLibraryState((state) => state.savedBy);
  if (found !== null) return <Found entries={found.entries} signer={found.signer} />;
  return (
    <section className="library-part">
      <h3>With colleagues</h3>
      <div className="button-row">
        <Button className="button" onPress={() => void library.save()}>
          Save the library as a file
        </Button>
        <FileTrigger
          acceptedFileTypes={['.jsonl']}
          onSelect={(files) => {
            const file = files?.[0];
            if (file !== undefined) void library.open(file);
          }}
        >
          <Button className="button">Open a colleague’s library</Button>
        </FileTrigger>
      </div>
      <p role="status" className="small">
        {savedBy !== null && (
          <>
            Saved. It is signed by this device, whose words are <KeyWords of={savedBy} />: your colleague sees
            the same ones on opening it.
          </>
        )}
      </p>
    </section>
  );
}

function Found({ entries, signer }: { entries: readonly ComparedEntry[]; signer: string }) {
  const library = useLibrary();
  const same = entries.filter(({ standing }) => standing === 'same').length;
  const taken = entries.filter(({ standing }) => takenIn.has(standing)).length;
  return (
    <section className="library-part">
      <h3>A colleague’s library</h3>
      <p>
        The device that signed it has the words <KeyWords of={signer} />. Ask your colleague whether theirs
        are the same. Nothing has been taken in yet.
      </p>
      <ul className="small" aria-label="What is in it">
        {entries.flatMap(({ kind, entry, standing }) =>
          standing === 'same'
            ? []
            : [
                <li key={`${kind} ${keyOf(entry)}`}>
                  {standingWords[standing]}: {kindWords[kind]} <strong>{shownName(entry)}</strong>
                  {entry.by !== '' && <> ({entry.by})</>}
                  {staying.has(standing) && (
                    <Button
                      className="button button-quiet"
                      aria-label={`Take in ${shownName(entry)} all the same`}
                      onPress={() => void library.takeOne(kind, keyOf(entry))}
                    >
                      Take in all the same
                    </Button>
                  )}
                </li>,
              ],
        )}
      </ul>
      <p className="small soft">
        {same === 0 ? 'Nothing in it is the same as here.' : `The same as here: ${same}.`}
      </p>
      <div className="button-row">
        {taken > 0 && (
          <Button className="button button-primary" onPress={() => void library.take()}>
            Take in {taken === 1 ? 'one entry' : `${taken} entries`}
          </Button>
        )}
        <Button className="button button-quiet" onPress={() => library.dismiss()}>
          {taken > 0 ? 'Leave it' : 'Close it: there is nothing to take in'}
        </Button>
      </div>
    </section>
  );
}

function shownName(entry: ComparedEntry['entry']): string {
  if ('exercise' in entry) return exerciseName(entry.exercise);
  return 'task' in entry ? exerciseName(entry.task) : entry.name;
}
