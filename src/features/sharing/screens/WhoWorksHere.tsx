import { useId, useState, type FormEvent } from 'react';
import { Button } from 'react-aria-components';
import { longestText } from '#documents/session/sessionDocument';
import { usePeople, usePeopleState } from '../peopleContext';
import './practice.css';

/** Asked once: the initials that sign what is done on this device. */
export function WhoWorksHere() {
  const people = usePeople();
  const initials = usePeopleState((state) => state.initials);
  const field = useId();
  const [typed, setTyped] = useState('');
  if (initials !== '') return null;
  const keep = (event: FormEvent) => {
    event.preventDefault();
    if (typed.trim() !== '') void people.setInitials(typed);
  };
  return (
    <form className="who-works" onSubmit={keep}>
      <label htmlFor={field}>Who works on this device?</label>
      <input
        id={field}
        className="text-input"
        placeholder="Initials"
        value={typed}
        maxLength={longestText.who}
        onChange={({ target }) => setTyped(target.value)}
      />
      <Button type="submit" className="button" isDisabled={typed.trim() === ''}>
        Keep the initials
      </Button>
      <span className="small soft">They sign what you decide, change and settle here.</span>
    </form>
  );
}
