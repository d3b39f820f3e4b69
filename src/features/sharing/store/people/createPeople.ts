import { createStore, type StoreApi } from 'zustand/vanilla';
import { Problem } from '#core/problem';
import { keyCardOf, longestKeyCard, readKeyCard } from '#documents/practice/keyCard';
import {
  mostColleagues,
  nobody,
  plainInitials,
  readPeople,
  withColleague,
  withoutColleague,
  type Colleague,
  type People as PeopleNote,
} from '#documents/practice/peopleNote';
import { explainProblem, type Doing } from '#shell/explainProblem';
import { isRecipient } from '#shell/seal';

export interface PeopleState extends Pick<PeopleNote, 'initials' | 'colleagues' | 'takenOut'> {
  /** A key that was read and is not in the list yet: its words are to be compared. */
  compared: Colleague | null;
  /** What went wrong. */
  sentence: string | null;
}

/** What the list of people needs from the world around it; tests hand in plain objects. */
export interface PeopleWorld {
  /** As it was when the page was opened. */
  firstText: string | null;
  /** As it is now: another tab may have changed it. */
  readText(): Promise<string | null>;
  /** Rejects where it can't be kept. */
  writeText(text: string): Promise<void>;
  /** Called with the own initials once they are kept. */
  onInitials(initials: string): void;
  /** The public keys of this device, earlier ones included. */
  ownKeys(): Promise<readonly string[]>;
  saveBlob(fileName: string, blob: Blob): void;
  now(): Date;
}

/** The people of the practice. No action throws or rejects: what goes wrong is in the state. */
export interface People {
  readonly store: StoreApi<PeopleState>;
  setInitials(initials: string): Promise<void>;
  /** Saves a public key with the own initials as a file for colleagues. */
  saveCard(key: string): void;
  /** Reads a colleague's key; nothing is kept before add(). */
  compare(card: string | Blob): Promise<void>;
  /** Keeps the key that was compared. */
  add(): Promise<void>;
  dismiss(): void;
  /** Takes a colleague out for what comes later; plans that were given keep their key. */
  takeOut(key: string): Promise<void>;
}

export function createPeople(world: PeopleWorld): People {
  const shown = ({ initials, colleagues, takenOut }: PeopleNote) => ({ initials, colleagues, takenOut });
  const first = readPeople(world.firstText);
  const store = createStore<PeopleState>(() => ({
    ...shown(first ?? nobody),
    compared: null,
    sentence: first === null ? unreadable : null,
  }));
  const { getState: get, setState: set } = store;

  const attempt = async (doing: Doing, work: () => Promise<void>) => {
    try {
      await work();
    } catch (error) {
      set({ sentence: explainProblem(error, doing).sentence });
    }
  };
  const change = async (changed: (people: PeopleNote) => PeopleNote) => {
    const people = readPeople(await world.readText());
    if (people === null) throw new Problem('storage', unreadable);
    const next = changed(people);
    await world.writeText(JSON.stringify(next));
    set({ ...shown(next), sentence: null });
  };
  const at = () => world.now().toISOString();

  return {
    store,
    setInitials: (typed) =>
      attempt('keep', async () => {
        const initials = plainInitials(typed);
        await change((people) => ({ ...people, initials }));
        world.onInitials(initials);
      }),
    saveCard(key) {
      const { initials } = get();
      if (initials === '') return;
      world.saveBlob('overfoot-my-key.txt', new Blob([`${keyCardOf({ initials, key })}\n`]));
    },
    compare: (card) =>
      attempt('open', async () => {
        set({ compared: null, sentence: null });
        // A file that is far too long is refused without being read whole.
        const text = typeof card === 'string' ? card : await card.slice(0, longestKeyCard + 1).text();
        const colleague = readKeyCard(text);
        if (!isRecipient(colleague.key)) throw new Problem('file', mistyped);
        if ((await world.ownKeys()).includes(colleague.key))
          throw new Problem(
            'file',
            'This is the key of this device. Take the one that your colleague shows.',
          );
        const known = get().colleagues.find(({ key }) => key === colleague.key);
        if (known !== undefined)
          throw new Problem('file', `This key is in the list already, as that of ${known.initials}.`);
        set({ compared: colleague });
      }),
    add: () =>
      attempt('keep', async () => {
        const { compared } = get();
        if (compared === null) return;
        await change((people) => {
          const next = withColleague(people, compared, at());
          if (next.colleagues.length > mostColleagues)
            throw new Problem('file', `The list holds ${mostColleagues} colleagues. Take one out first.`);
          return next;
        });
        set({ compared: null });
      }),
    dismiss: () => set({ compared: null, sentence: null }),
    takeOut: (key) => attempt('keep', () => change((people) => withoutColleague(people, key, at()))),
  };
}

const unreadable =
  'The list of colleagues kept on this device can’t be read, and was left as it is. Restore a backup of everything.';
const mistyped =
  'This key is not whole: a letter of it was changed or lost. Ask your colleague to show “My key” again.';
