import { describe, expect, it } from 'vitest';
import { Problem } from '#core/problem';
import { keyCardOf } from '#documents/practice/keyCard';
import { createPeople } from '#features/sharing/store/people/createPeople';
import { newKeyPair } from '#shell/seal';

const [own, theirs, later] = await Promise.all([newKeyPair(), newKeyPair(), newKeyPair()]);

function open(first: string | null = null) {
  const kept = { text: first, isFull: false };
  const saved: Blob[] = [];
  const told: string[] = [];
  const people = createPeople({
    firstText: first,
    readText: () => Promise.resolve(kept.text),
    writeText(text) {
      if (kept.isFull) return Promise.reject(new Problem('storage', 'It is full.'));
      kept.text = text;
      return Promise.resolve();
    },
    onInitials: (initials) => void told.push(initials),
    ownKeys: () => Promise.resolve([own.recipient]),
    saveBlob: (_, blob) => void saved.push(blob),
    now: () => new Date('2026-05-06T07:08:09Z'),
  });
  return { people, kept, saved, told, state: () => people.store.getState() };
}

const card = keyCardOf({ initials: 'KN', key: theirs.recipient });

describe('createPeople(world)', () => {
  it('keeps a colleague’s key once its words were compared, and not before', async () => {
    const { people, kept, state } = open();
    await people.compare(new Blob([card]));
    expect(state()).toMatchObject({ compared: { initials: 'KN', key: theirs.recipient }, colleagues: [] });
    expect(kept.text).toBeNull();
    await people.add();
    expect(state()).toMatchObject({ compared: null, sentence: null });
    expect(open(kept.text).state().colleagues).toEqual([{ initials: 'KN', key: theirs.recipient }]);
  });

  it('keeps nothing where the words differ', async () => {
    const { people, kept, state } = open();
    await people.compare(card);
    people.dismiss();
    await people.add();
    expect(state().colleagues).toEqual([]);
    expect(kept.text).toBeNull();
  });

  it('gives the own key with the own initials', async () => {
    const { people, saved, told } = open();
    people.saveCard(own.recipient);
    expect(saved).toEqual([]);
    await people.setInitials(' QM ');
    expect(told).toEqual(['QM']);
    people.saveCard(own.recipient);
    expect(await saved[0]?.text()).toBe(`overfoot-key:1:QM:${own.recipient}\n`);
  });

  it('refuses the own key, one that is known, and one with a changed letter', async () => {
    const { people, state } = open();
    await people.compare(keyCardOf({ initials: 'QM', key: own.recipient }));
    expect(state()).toMatchObject({ compared: null, sentence: expect.stringMatching(/key of this device/) });
    const letter = card.endsWith('q') ? 'p' : 'q';
    await people.compare(`${card.slice(0, -1)}${letter}`);
    expect(state()).toMatchObject({ compared: null, sentence: expect.stringMatching(/a letter of it/) });
    await people.compare(card);
    await people.add();
    await people.compare(card.replace(':KN:', ':XX:'));
    expect(state()).toMatchObject({
      compared: null,
      sentence: expect.stringMatching(/already, as that of KN/),
    });
  });

  it('takes somebody out, also where another tab added somebody meanwhile', async () => {
    const { people, kept, state } = open();
    await people.compare(card);
    await people.add();
    const other = open(kept.text);
    await other.people.compare(keyCardOf({ initials: 'AB', key: later.recipient }));
    await other.people.add();
    kept.text = other.kept.text;
    await people.takeOut(theirs.recipient);
    expect(state().colleagues.map(({ initials }) => initials)).toEqual(['AB']);
    expect(state().takenOut).toMatchObject([{ initials: 'KN', key: theirs.recipient }]);
  });

  it('writes nothing over a list that can’t be read, and says what can’t be kept', async () => {
    const damaged = open('{');
    expect(damaged.state().sentence).toMatch(/can’t be read/);
    await damaged.people.setInitials('QM');
    expect(damaged.kept.text).toBe('{');
    const { people, kept, state } = open();
    kept.isFull = true;
    await people.setInitials('QM');
    expect(state()).toMatchObject({ initials: '', sentence: 'It is full.' });
  });
});
