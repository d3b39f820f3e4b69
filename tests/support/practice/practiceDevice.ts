import { openReplica, type Replica, type ServerAccess } from '#device/replica/openReplica';
import type { Repository } from '#device/storage/repository';
import { nobody, withColleague, withoutColleague, type People } from '#documents/practice/peopleNote';
import type { SharedScope } from '#documents/practice/sharedHead';
import { createReplication, type Replication } from '#features/sharing/store/replica/createReplication';
import { newKeyPair, type KeyPair } from '#shell/seal';
import { PouchInNode } from '#tools/commands/tools/practice/pouchInNode';
import { createTestDevice } from '../openTestRepository';

export interface PracticeDevice {
  initials: string;
  key: KeyPair;
  repository: Repository;
  replica: Replica;
  replication: Replication;
  people(): People;
  /** Exchanges with the server until there is nothing more to say. */
  exchange(server: Pick<ServerAccess, 'address'>): Promise<void>;
  /** Closes the program, and opens it again over the same storage. */
  reopen(): Promise<void>;
  takeOut(other: PracticeDevice): Promise<void>;
  add(other: PracticeDevice): Promise<void>;
}

let devices = 0;
/** A moment that moves on by itself, so that nothing happens at the same time. */
let clockMs = Date.parse('2026-05-06T07:08:09.000Z');
const now = () => new Date((clockMs += 1000));

/** A therapist's device in a practice, over storage in memory. */
export async function practiceDevice(
  initials: string,
  { scope = 'records' }: { scope?: SharedScope } = {},
): Promise<PracticeDevice> {
  const key = await newKeyPair();
  const name = `device-${++devices}-${initials}`;
  const kept = createTestDevice();
  let people: People = { ...nobody, initials };
  const open = async (): Promise<Pick<PracticeDevice, 'repository' | 'replica' | 'replication'>> => {
    const repository = await kept.open();
    const replica = openReplica(PouchInNode, name, {
      local: { adapter: 'memory' },
    });
    const replication = await createReplication(
      {
        repository,
        replica,
        readPeople: () => Promise.resolve(people),
        readKeys: () => Promise.resolve([key]),
        scope,
        onErased: () => undefined,
        newId: () => crypto.randomUUID(),
        now,
      },
      () => undefined,
    );
    await replication.sendAll();
    return { repository, replica, replication };
  };
  const change = async (next: People) => {
    people = next;
    await device.repository.notes.write('people', JSON.stringify(next));
    await device.replication.settled();
  };
  const device: PracticeDevice = {
    initials,
    key,
    ...(await open()),
    people: () => people,
    async exchange({ address }) {
      const server = { address, user: '', password: '' };
      await device.replication.settled();
      for (let isMore = true; isMore;) {
        isMore = await device.replica.round(server, new AbortController().signal);
        isMore = (await device.replication.receive()) || isMore;
      }
      await device.replication.settled();
    },
    async reopen() {
      device.replication.stop();
      await device.replication.settled().catch(() => undefined);
      device.repository.close();
      Object.assign(device, await open());
    },
    takeOut: (other) => change(withoutColleague(people, other.key.recipient, now().toISOString())),
    add: (other) =>
      change(
        withColleague(people, { initials: other.initials, key: other.key.recipient }, now().toISOString()),
      ),
  };
  return device;
}

/** Devices whose owners have compared each other's keys. */
export async function practiceOf(...initials: string[]): Promise<PracticeDevice[]> {
  const all = await Promise.all(initials.map((one) => practiceDevice(one)));
  for (const one of all) for (const other of all) if (other !== one) await one.add(other);
  return all;
}
