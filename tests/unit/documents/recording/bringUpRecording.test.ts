import { describe, expect, it } from 'vitest';
import { measure } from '#core/measurement/measure';
import { withLimit } from '#core/protocol/limits';
import { judge } from '#core/scoring/judge';
import { buildRecording } from '#documents/recording/buildRecording';
import { parseRecording } from '#documents/recording/parseRecording';
import { noRange } from '../../../support/kneeJudgement';
import { keptOf, olderLimits, version5, version6, version8 } from '../../../support/olderRecording';
import { smallRecordingParts } from '../../../support/smallRecording';

const parts = smallRecordingParts();
const present = buildRecording(parts);

const read = (document: object) => parseRecording(JSON.stringify(document));

describe('parseRecording(text) of an older version', () => {
  const derived = version5(present).derived;
  const oldView = Object.fromEntries(
    Object.entries(present.derived.view!).filter(([name]) => name !== 'rollDeg'),
  );
  const old = { ...version5(present), version: 1, derived: { ...derived, view: oldView } };

  it('reads a document of version 1, which took no roll out', () => {
    const { derived: now, ...rest } = read(old);
    expect(rest.version).toBe(present.version);
    expect(now.view).toEqual({ ...present.derived.view, rollDeg: 0 });
    expect({ ...rest, derived: null }).toEqual({ ...present, derived: null });
  });

  it.each([7, 8])(
    'reads a document of version %d, which named a reading of the view otherwise',
    (version) => {
      const view = present.derived.view!;
      const cues = view.cues.map((cue) =>
        cue.name === 'facing-camera' ? { ...cue, name: 'told-to-face-the-camera' } : cue,
      );
      expect(cues).not.toEqual(view.cues);
      const older = { ...present, version, derived: { ...present.derived, view: { ...view, cues } } };
      expect(read(older)).toEqual(present);
    },
  );

  it.each([2, 3, 4, 5])(
    'reads a document of version %d, in which a verdict was the knee’s alone',
    (version) => {
      expect(derived.repetitions.length).toBeGreaterThan(0);
      expect(read({ ...version5(present), version })).toEqual(keptOf(present));
    },
  );

  it('reads a document of version 6, in which the knee angle stood apart', () => {
    const { min, max } = parts.measurement.repetitions[0]!.ranges.depth;
    const limits = [
      withLimit(parts.limits, 'depth', 'most', max!.value - 2 * max!.band),
      withLimit(parts.limits, 'pelvis-place', 'least', 1.5),
      { ...parts.limits, 'knee-angle': { least: -2, most: 2 } },
    ];
    expect(min).not.toBeNull();
    for (const one of limits) {
      const document = buildRecording({ ...parts, limits: one });
      expect(read(version6(document))).toEqual(keptOf(document));
    }
  });

  it('reads one of version 6 in which the knee angle is missing while another measure is out of line', () => {
    const lost = { ...noRange, mainReason: 'joint-unseen' as const };
    const { depth } = parts.measurement.repetitions[0]!.ranges;
    const limits = withLimit(parts.limits, 'depth', 'most', depth.max!.value - 2 * depth.max!.band);
    const document = buildRecording({ ...parts, limits });
    const [first, ...rest] = document.derived.repetitions;
    const measured = {
      ...parts.measurement.repetitions[0]!,
      ranges: { ...first!.ranges, 'knee-angle': lost },
    };
    const judgement = judge(measured as (typeof parts.measurement.repetitions)[0], parts.measurement, limits);
    expect(judgement).toMatchObject({ verdict: 'out', decidedBy: 'depth', alignmentScorePct: null });
    const changed = { ...first!, ranges: measured.ranges, judgement };
    const blind = { ...document, derived: { ...document.derived, repetitions: [changed, ...rest] } };
    expect(read(version6(blind))).toEqual(keptOf(blind));
  });

  it('reads a document of version 8, and grades by chance what was near a limit', () => {
    for (const inwardDeg of [4, 7, 10, 13]) {
      const limits = withLimit(parts.limits, 'knee-angle', 'most', inwardDeg);
      const document = buildRecording({ ...parts, limits });
      expect(read(version8(document))).toEqual(document);
    }
  });

  it('reads a document of version 9, which did not say whether the side is in doubt', () => {
    expect(read({ ...present, version: 9 })).toEqual(present);
    const { task } = parts.measurement.setup;
    const doubted = buildRecording({ ...parts, measurement: measure(parts.track, { task, side: 'left' }) });
    expect(doubted.derived.isSideDoubtful).toBe(true);
    expect(read(doubted)).toEqual(doubted);
  });

  it('reads limits that a review set in an older version', () => {
    const signed = { by: 'T1', at: '2024-03-06T07:08:09.010Z' };
    const limits = withLimit(parts.limits, 'trunk-lean', 'least', -8);
    const review = { remarks: [], cues: [], reviewed: null };
    const older = { ...review, limitsSet: [{ ...signed, limits: olderLimits(limits) }] };
    expect(read({ ...version6(present), review: older }).review).toEqual({
      ...review,
      limitsSet: [{ ...signed, limits, forLater: true }],
    });
  });

  it('keeps limits of version 10 in force for later recordings, and asks for that from version 11 on', () => {
    const set = { by: 'T1', at: '2024-03-06T07:08:09.010Z', limits: parts.limits };
    const document = { ...present, review: { remarks: [], cues: [], reviewed: null, limitsSet: [set] } };
    expect(read({ ...document, version: 10 }).review!.limitsSet).toEqual([{ ...set, forLater: true }]);
    expect(read(document).review!.limitsSet).toEqual([set]);
  });

  it('reads one in which the leg was never seen', () => {
    const unseen = { ...old, derived: { ...old.derived, view: null } };
    expect(read(unseen).derived.view).toBeNull();
  });
});
