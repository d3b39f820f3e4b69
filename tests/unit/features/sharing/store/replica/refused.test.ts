import { describe, expect, it } from 'vitest';
import { Refusal } from '#features/sharing/store/replica/refusal';
import { readRefused } from '#features/sharing/store/replica/refused';
import { createTestDevice } from '../../../../../support/openTestRepository';

const namesake = { pseudonym: 'Blue Heron 7', patientId: '6a1f0a52-1d2e-4c57-9a5b-0f6f1f0e9d66', by: 'AB' };

describe('readRefused(rows)', () => {
  it('reads what earlier versions kept, a reason alone, and says who it is once that is known', async () => {
    const { replica: rows } = await createTestDevice().open();
    await rows.put('refused:one', 'namesake');
    await rows.put('refused:two', 'no reason');
    const refused = await readRefused(rows);
    expect(refused.list()).toEqual([{ id: 'one', reason: 'namesake', namesake: null }]);
    await refused.note('one', new Refusal('namesake', {}, namesake));
    await refused.note('three', new Refusal('waits'));
    const later = [
      { id: 'one', reason: 'namesake', namesake },
      { id: 'three', reason: 'waits', namesake: null },
    ];
    expect(refused.list()).toEqual(later);
    const again = await readRefused(rows);
    expect(again.list().sort((a, b) => (a.id < b.id ? -1 : 1))).toEqual(later);
    await again.note('one', null);
    expect((await readRefused(rows)).list()).toHaveLength(1);
  });
});
