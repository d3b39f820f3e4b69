import { describe, expect, it } from 'vitest';
import { clinicianFlagIds } from '#core/safety/clinicianFlagIds';
import { clinicianFlags } from '#core/safety/clinicianFlags';
import { flagsOf, flagSources, redFlagsSentences } from '#features/patients/rules/caseWords';
import { restrictionOf } from '#features/patients/rules/restrictionOf';

const visit = {
  ...{ id: 'v', at: '2026-04-03T08:00:00.000Z', by: 'AB', withdrawn: null, on: '2026-04-03' },
  ...{ asked: [], applied: [] },
};

describe('redFlagsSentences(visit)', () => {
  it('says what was asked about, what applied, and what was not asked about', () => {
    const all = clinicianFlags.map(({ id }) => id);
    expect(redFlagsSentences({ ...visit, asked: all })).toEqual([
      `Friday 3 April 2026, AB: ${all.length} of ${all.length} asked about, none applied.`,
    ]);
    const [said, notAsked] = redFlagsSentences({ ...visit, asked: all.slice(1), applied: ['calf'] });
    expect(said).toMatch(/applied: a calf that is newly swollen/);
    expect(notAsked).toBe(`Not asked about: ${clinicianFlags[0].asks}.`);
  });

  it('has words for each sign that documents name', () => {
    expect(clinicianFlags.map(({ id }) => id)).toEqual(clinicianFlagIds);
  });

  it('names a source of each sign, or that it has none', () => {
    for (const source of flagSources()) expect(source).toMatch(/: .*(NHS|Stiell|no source)/);
  });
});

describe('flagsOf(answers)', () => {
  it('takes what was not answered as not asked', () => {
    expect(flagsOf({})).toBeNull();
    expect(flagsOf({ calf: 'not-asked' })).toBeNull();
    expect(flagsOf({ calf: 'applies', wound: 'no' })).toEqual({
      asked: ['calf', 'wound'],
      applied: ['calf'],
    });
  });
});

describe('restrictionOf(draft)', () => {
  const draft = { kind: 'bend', side: 'left', mostDeg: '90', setBy: ' surgeon ', until: '' } as const;
  const common = { side: 'left', setBy: 'surgeon', until: null };
  it.each([
    [draft, { ...common, kind: 'bend', mostDeg: 90 }],
    [
      { ...draft, kind: 'part-weight', until: '2026-05-01' },
      { ...common, until: '2026-05-01', kind: 'weight-bearing', bearing: 'partial' },
    ],
    [
      { ...draft, kind: 'no-weight' },
      { ...common, kind: 'weight-bearing', bearing: 'none' },
    ],
    [
      { ...draft, kind: 'open-chain' },
      { ...common, kind: 'open-chain' },
    ],
    [{ ...draft, mostDeg: '' }, 'Write how far the knee may bend: degrees from straight, 0 to 140.'],
    [{ ...draft, mostDeg: '141' }, 'Write how far the knee may bend: degrees from straight, 0 to 140.'],
    [{ ...draft, setBy: ' ' }, 'Say who set it, such as the surgeon.'],
  ] as const)('makes a restriction, or says what is missing (%#)', (given, made) => {
    expect(restrictionOf(given)).toEqual(made);
  });
});
