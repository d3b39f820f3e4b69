import { useId, useState, type FormEvent } from 'react';
import { Button } from 'react-aria-components';
import { libraryBounds } from '#documents/library/libraryDocument';
import { useLibrary, useLibraryState } from '../libraryContext';

/** Keeps the plan's words to the patient in the library, under a name. */
export function KeepWords({ words }: { words: string }) {
  const library = useLibrary();
  const texts = useLibraryState((state) => state.library.texts);
  const field = useId();
  const [typed, setTyped] = useState('');
  const name = typed.trim();
  const keep = (event: FormEvent) => {
    event.preventDefault();
    if (name === '') return;
    setTyped('');
    void library.keep('texts', { name, text: words });
  };
  return (
    <form className="library-words" onSubmit={keep}>
      <label htmlFor={field}>Your words to the patient, kept under the name</label>
      <input
        id={field}
        className="text-input"
        value={typed}
        maxLength={libraryBounds.name}
        onChange={({ target }) => setTyped(target.value)}
      />
      <Button type="submit" className="button" isDisabled={name === ''}>
        {texts.some((one) => one.name === name) ? 'Replace it' : 'Keep'}
      </Button>
      <span className="small soft">They must fit any patient: take out what is of this one alone.</span>
    </form>
  );
}
