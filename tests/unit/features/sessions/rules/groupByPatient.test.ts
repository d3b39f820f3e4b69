import { describe, expect, it } from 'vitest';
import { groupByPatient } from '#features/sessions/rules/groupByPatient';
import { listedSession } from '../../../../support/listedSession';

const session = (patient: string, day: number) =>
  listedSession({ patient, id: `${patient} ${day}`, startedAt: `2026-04-0${day}T06:07:08.000Z` });

describe('groupByPatient(sessions)', () => {
  it('sorts by time, newest first, within a patient and among patients', () => {
    const groups = groupByPatient([
      session('heron', 2),
      session('otter', 5),
      session('heron', 4),
      session('', 3),
      session('otter', 1),
    ]);
    expect(groups.map(({ patient, sessions }) => [patient, sessions.map(({ id }) => id)])).toEqual([
      ['otter', ['otter 5', 'otter 1']],
      ['heron', ['heron 4', 'heron 2']],
      ['', [' 3']],
    ]);
  });

  it('puts first what is still open, however old', () => {
    const groups = groupByPatient([
      session('otter', 5),
      session('heron', 4),
      { ...session('heron', 1), isOpen: true },
      { ...session('wren', 2), isOpen: true },
    ]);
    expect(groups.map(({ patient, sessions }) => [patient, sessions.map(({ id }) => id)])).toEqual([
      ['wren', ['wren 2']],
      ['heron', ['heron 1', 'heron 4']],
      ['otter', ['otter 5']],
    ]);
  });

  it('is empty without sessions', () => {
    expect(groupByPatient([])).toEqual([]);
  });
});
