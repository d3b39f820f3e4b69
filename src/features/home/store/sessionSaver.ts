import type { SessionDocument } from '#documents/session/sessionDocument';
import { hasSaid, isSaved } from './homeState';
import type { HomeStorage } from './homeStorage';
import type { HomeStore } from './homeStore';
import type { SetKeeper } from './setKeeper';

interface SaverParts {
  home: Pick<HomeStore, 'get'>;
  storage: Pick<HomeStorage, 'repository'>;
  keeper: Pick<SetKeeper, 'settled'>;
  session: () => SessionDocument;
}

/** Keeps what is answered the moment it is answered, so that closing the page loses none of it. */
export interface SessionSaver {
  /** To be called after an answer; nothing where nothing was said yet, or the session is saved already. */
  keep(): void;
  /** Cancels what is still to be kept; resolves once nothing is being kept any more. */
  settle(): Promise<void>;
}

export function createSessionSaver({ home, storage, keeper, session }: SaverParts): SessionSaver {
  let due: SessionDocument | null = null;
  let keeping: Promise<void> | null = null;
  const isOpen = () => hasSaid(home.get()) && !isSaved(home.get());
  /** What was asked to be kept, or, while its session goes on, all that was said by now. */
  const latest = (asked: SessionDocument) => (isOpen() && session().id === asked.id ? session() : asked);
  const work = async () => {
    while (due !== null) {
      await keeper.settled();
      if (due === null) break;
      const kept = latest(due);
      due = null;
      // What can't be kept now is told when the session is saved.
      await (await storage.repository).sessions.save(kept).catch(() => undefined);
    }
    keeping = null;
  };
  return {
    keep() {
      if (!isOpen()) return;
      due = session();
      keeping ??= work();
    },
    async settle() {
      due = null;
      await keeping;
    },
  };
}
