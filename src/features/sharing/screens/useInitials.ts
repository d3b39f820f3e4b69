import { useState } from 'react';
import { usePeople, usePeopleState } from '../peopleContext';

interface Initials {
  /** What the field shows: who works on this device, until something else is typed. */
  by: string;
  setBy(by: string): void;
  /** To be called with what was signed: the first initials are kept as those of the device. */
  remember(by: string): void;
}

/** The initials with which a form is signed. */
export function useInitials(): Initials {
  const people = usePeople();
  const known = usePeopleState(({ initials }) => initials);
  const [typed, setBy] = useState<string | null>(null);
  return {
    by: typed ?? known,
    setBy,
    remember: (by) => {
      if (known === '' && by.trim() !== '') void people.setInitials(by);
    },
  };
}
