import { describe, expect, it } from 'vitest';
import { groupByPatient } from '#features/sessions/rules/groupByPatient';
import { inboxVisit } from '../../../../support/inboxVisit';

const visit = (patient: string, day: number) =>
  inboxVisit({ patient, id: `${patient} ${day}`, startedAt: `2026-04-0${day}T06:07:08.000Z` });

describe('groupByPatient(visits)', () => {
  it('sorts by time, newest first, within a patient and among patients', () => {
    const groups = groupByPatient([
      visit('heron', 2),
      visit('otter', 5),
      visit('heron', 4),
      visit('', 3),
      visit('otter', 1),
    ]);
    expect(groups.map(({ patient, visits }) => [patient, visits.map(({ id }) => id)])).toEqual([
      ['otter', ['otter 5', 'otter 1']],
      ['heron', ['heron 4', 'heron 2']],
      ['', [' 3']],
    ]);
  });

  it('is empty without visits', () => {
    expect(groupByPatient([])).toEqual([]);
  });
});
