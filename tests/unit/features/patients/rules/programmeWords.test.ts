import { describe, expect, it } from 'vitest';
import type { Decision } from '#documents/patient/patientDocument';
import { proposedLines } from '#features/patients/rules/programmeWords';
import { listedSession } from '../../../../support/listedSession';
import { smallHold, smallItem, smallPlan } from '../../../../support/smallPlan';

const item = smallItem({ task: 'single-leg-sit-to-stand', stage: 'seat-46', seatHeightCm: 46 });
const plan = smallPlan({ items: [smallHold(), item], painLimit: 3 });
const painful = listedSession({ startedAt: '2026-04-05T08:00:00.000Z', painBefore: 8 });
const decision: Decision = {
  id: '7b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11',
  at: '2026-04-06T08:00:00.000Z',
  by: 'XY',
  planId: plan.id,
  item: 1,
  task: item.task,
  proposal: 'stay',
  repetitions: null,
  reasons: [],
  answer: 'refused',
  why: 'wants a lower seat',
};

describe('proposedLines(plan, sessions, patient)', () => {
  it('says for each exercise that is counted what is proposed, and on what that rests', () => {
    const lines = proposedLines(plan, [], { thresholds: {}, decisions: [] });
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(
      /^Single-leg sit-to-stand: “Stay at this stage.” Proposed: stage \d of \d again/,
    );
    expect(lines[0]).toMatch(/Too early\. Sessions at this stage so far: 0/);
    expect(
      proposedLines(smallPlan({ items: [smallHold()] }), [painful], { thresholds: {}, decisions: [] }),
    ).toEqual([]);
  });

  it('says what was decided on it, unless that was on something else', () => {
    const lineOf = (decisions: Decision[]) => proposedLines(plan, [], { thresholds: {}, decisions })[0]!;
    expect(lineOf([decision])).toMatch(
      /XY, Mon 6 Apr 2026: refused “Stay at this stage”: wants a lower seat\.$/,
    );
    const later = listedSession({ startedAt: '2026-04-07T08:00:00.000Z' });
    expect(proposedLines(plan, [later], { thresholds: {}, decisions: [decision] })[0]).not.toContain(
      'refused',
    );
    expect(lineOf([{ ...decision, proposal: 'step-up' }])).not.toContain('refused');
    expect(lineOf([{ ...decision, item: 0 }])).not.toContain('refused');
  });
});
