import type { Marks } from './marks';
import { storageProblem } from './storageProblem';

/** Prefix of the mark held by every tab that has the repository open. */
const openMark = 'overfoot-open:';
/** Held while what is kept is copied from one shelf to another. */
const movingMark = 'overfoot-moving';

/** This tab among the program's tabs. */
export interface Tabs {
  /** @throws StorageProblem  'other-tab' while another tab is open */
  assertAlone(): Promise<void>;
  /**
   * Does work that no other tab may see half done: a tab that is opened meanwhile waits until its end.
   *
   * @throws StorageProblem  'other-tab' while another tab is open
   */
  alone<Value>(work: () => Promise<Value>): Promise<Value>;
}

/** Tells the other tabs of this one, until it is closed, and waits while one of them is at work alone. */
export async function enterTabs(marks: Marks): Promise<Tabs> {
  const own = `${openMark}${crypto.randomUUID()}`;
  await marks.hold(own);
  (await marks.hold(movingMark))();
  const assertAlone = async () => {
    for (const name of await marks.held())
      if (name.startsWith(openMark) && name !== own) throw storageProblem('other-tab');
  };
  return {
    assertAlone,
    async alone(work) {
      const release = await marks.hold(movingMark);
      try {
        await assertAlone();
        return await work();
      } finally {
        release();
      }
    },
  };
}
