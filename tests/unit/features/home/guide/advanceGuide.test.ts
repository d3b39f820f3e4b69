import { describe, expect, it } from 'vitest';
import { startGuide } from '#features/home/guide/advanceGuide';
import { judgeSpoken } from '#tools/commands/tools/home/judgeSpoken';
import { smallHold, smallItem } from '../../../../support/smallPlan';
import { optionsFor, Walk } from './walk';

/** Five sit-to-stands, two sets with 40 s of rest. */
const twoSets = () => new Walk(optionsFor([smallItem()]));
const atWork = (walk = twoSets()) => walk.comeIn().until('working');

describe('advanceGuide(options, state, event): a set', () => {
  it('goes from placing to the end of all sets without a touch', () => {
    const walk = atWork().repeat(5).until('resting').until('working').repeat(5).until('all-done');
    const set = ['placing', 'standing', 'ready', 'countdown', 'working', 'finishing', 'set-done'];
    expect(walk.phases).toEqual([...set, 'resting', ...set, 'all-done']);
    expect(walk.recorded()).toEqual(['start', 'stop', 'start', 'stop']);
    expect(
      walk.state.results.map(({ number, counted, prescribed, cutShort }) => [
        number,
        counted,
        prescribed,
        cutShort,
      ]),
    ).toEqual([
      [1, 5, 5, null],
      [2, 5, 5, null],
    ]);
    expect(walk.view().presses).toEqual([]);
  });

  it('says each thing in turn', () => {
    expect(atWork().repeat(5).until('resting').said()).toEqual([
      'Set one of two: split-stance sit-to-stand, right leg.',
      'If it hurts more than three of ten, stop and sit down. Walk out of the picture, and it pauses.',
      'Good. Now stand still on both feet.',
      'Sit down, right foot in front. Five repetitions.',
      'Three.',
      'Two.',
      'One.',
      'Go.',
      'One.',
      'Two. Three more.',
      'Three. Two more.',
      'Four. One more.',
      'Five. That was the last one.',
      'Set done. Well done.',
      'Rest for forty seconds. Then: set two of two: split-stance sit-to-stand, right leg.',
      'Come to the screen, and choose how much it hurt.',
    ]);
  });

  it('does not count down before how much and how fast has been said', () => {
    const tempo = { downSeconds: 3, pauseSeconds: 1, upSeconds: 2 };
    const toCountdown = (walk: Walk) => {
      walk.comeIn().until('ready').send({ kind: 'posture', posture: 'seated' });
      const fromMs = walk.state.nowMs;
      return walk.until('countdown').state.nowMs - fromMs;
    };
    const plain = toCountdown(twoSets());
    const paced = toCountdown(new Walk(optionsFor([smallItem({ tempo })])));
    expect(plain).toBeGreaterThanOrEqual(2500);
    expect(paced).toBeGreaterThanOrEqual(6000);
    expect(paced).toBeLessThan(9000);
  });

  it('ties the kept recording to the result', () => {
    const walk = atWork().repeat(5).until('set-done');
    expect(walk.effects).toContainEqual({ kind: 'record', action: 'stop', result: 0 });
    expect(walk.state.results[0]).toMatchObject({
      isRecorded: true,
      itemIndex: 0,
      side: 'right',
      heldMs: null,
    });
  });

  it('keeps recording for a moment after the last repetition, so that its end is seen', () => {
    const walk = atWork().repeat(5);
    expect(walk.wait(1200).state.recording).toBe('on');
    expect(walk.wait(400).state.recording).toBe('off');
  });

  it('counts nothing beyond what was asked for, and nothing outside of working', () => {
    const repetition = { kind: 'repetition', heard: null } as const;
    const walk = twoSets().send(repetition).comeIn().send(repetition).until('working').repeat(5);
    walk.send(repetition).until('set-done').send(repetition).until('resting').send(repetition);
    expect(walk.state.results[0]!.counted).toBe(5);
    expect(walk.until('working').view().count).toBe(0);
  });

  it('leaves the state that it was given as it is', () => {
    const { state } = startGuide(optionsFor([smallItem()]), 0);
    const before = structuredClone(state);
    const walk = new Walk(optionsFor([smallItem()]));
    walk.state = Object.freeze(state);
    walk.comeIn().until('working');
    expect(state).toEqual(before);
  });

  it('refuses to begin with nothing to do', () => {
    expect(() => startGuide(optionsFor([]), 0)).toThrow(RangeError);
  });
});

describe('advanceGuide(options, state, event): placing', () => {
  const red = (line: string, cost: 'exactness' | 'measuring' | 'everything' = 'measuring') =>
    ({ kind: 'placing', isGood: false, line, cost }) as const;
  const green = { kind: 'placing', isGood: true, line: null, cost: 'nothing' } as const;

  it('says what to move, again after a while, and another hint sooner', () => {
    const walk = twoSets().send({ kind: 'person', isPresent: true }).clear();
    walk.send(red('Step back.')).wait(7900);
    expect(walk.said()).toEqual(['Step back.']);
    expect(walk.wait(200).said()).toEqual(['Step back.', 'Step back.']);
    walk.send(red('A little to your left.')).wait(2500);
    expect(walk.said()).toHaveLength(2);
    expect(walk.wait(600).said().at(-1)).toBe('A little to your left.');
    expect(walk.view().placingLine).toBe('A little to your left.');
  });

  it('waits until it is steady', () => {
    const walk = twoSets().comeIn().wait(1000).send(red('Step back.')).wait(1000);
    walk.wait(5000).send(green).wait(1000);
    expect(walk.state.ruleSaidMs).toBeNull();
    // From then on nothing but what is said first is waited for.
    expect(walk.wait(300).state.ruleSaidMs).not.toBeNull();
    expect(walk.until('standing').phases).toEqual(['placing', 'standing']);
  });

  it('is checked again after a pause, since the person has walked to the device', () => {
    const walk = atWork().press('pause').press('resume');
    walk.send({ kind: 'tick', nowMs: walk.state.nowMs + 900 });
    expect(walk.state).toMatchObject({ phase: 'placing', isPlaced: false });
    expect(walk.wait(1000).state.phase).toBe('placing');
    expect(walk.wait(300).state.phase).toBe('ready');
  });

  it('does not begin while nobody is there', () => {
    const walk = twoSets().send(green).wait(30_000);
    expect(walk.state.phase).toBe('placing');
  });

  it('continues from the quiet stand at once if the person stands still, and otherwise says once what to do', () => {
    const still = twoSets().comeIn().until('standing').send({ kind: 'stand', line: null });
    expect(still.wait(3600).state.phase).toBe('ready');
    const restless = twoSets()
      .comeIn()
      .until('standing')
      .clear()
      .send({ kind: 'stand', line: 'Stand upright.' });
    expect(restless.wait(3600).state.phase).toBe('standing');
    expect(
      restless
        .wait(2000)
        .said()
        .filter((line) => line === 'Stand upright.'),
    ).toHaveLength(1);
    expect(restless.send({ kind: 'stand', line: null }).wait(300).state.phase).toBe('ready');
  });

  it('lets somebody who can’t stand still exercise', () => {
    const restless = twoSets().comeIn().until('standing').send({ kind: 'stand', line: 'Stand upright.' });
    expect(restless.wait(8000).state.phase).toBe('standing');
    expect(restless.wait(1200).state.phase).toBe('ready');
  });

  it('goes back, keeps nothing and calls the person back where they left the quiet stand', () => {
    const walk = twoSets().comeIn().until('standing').clear();
    walk.send({ kind: 'person', isPresent: false }).wait(1200);
    expect(walk.state.phase).toBe('placing');
    expect(walk.recorded()).toEqual(['discard']);
    expect(walk.said()).toEqual(['Come back to your place.']);
  });

  it('says the reason itself to somebody who is there, and calls nobody back', () => {
    const walk = twoSets().comeIn().until('standing').clear().send(red('Turn your left shoulder back.'));
    walk.wait(1100);
    expect(walk.state.phase).toBe('placing');
    expect(walk.wait(300).said()).toEqual(['Turn your left shoulder back.']);
  });

  it('ends no quiet stand for what only costs exactness', () => {
    const walk = twoSets().comeIn().until('standing').clear();
    walk.send(red('Close other apps.', 'exactness')).until('working');
    expect(walk.phases).toEqual(['placing', 'standing', 'ready', 'countdown', 'working']);
    expect(walk.said()).not.toContain('Close other apps.');
  });

  it('goes on after two quiet stands in vain, and says what that costs', () => {
    const walk = twoSets();
    for (let times = 0; times < 2; times++) {
      walk.comeIn().until('standing').send(red('Turn your left shoulder back.')).until('placing');
    }
    walk.comeIn().until('standing').clear().send(red('Turn your left shoulder back.')).until('ready');
    expect(walk.said()).toEqual([
      'Let’s continue. Some of it may not be measured.',
      'Sit down, right foot in front. Five repetitions.',
    ]);
  });

  it.each([
    ['exactness', 'Let’s continue. It will be measured less exactly. Now stand still on both feet.'],
    ['measuring', 'Let’s continue. Some of it may not be measured. Now stand still on both feet.'],
  ] as const)('goes on after the same hint twice in vain, which costs %s', (cost, line) => {
    const walk = twoSets().send({ kind: 'person', isPresent: true }).clear().send(red('More light.', cost));
    walk.until('standing');
    expect(walk.said()).toEqual(['More light.', 'More light.', expect.stringMatching(/^If it hurts/), line]);
    expect(walk.until('working').phases.filter((phase) => phase === 'placing')).toHaveLength(1);
  });

  it('never begins with nobody, or not all of somebody, in the picture', () => {
    const walk = twoSets().send({ kind: 'person', isPresent: true });
    expect(walk.send(red('Step back.', 'everything')).wait(60_000).state.phase).toBe('placing');
    const gone = twoSets().send(red('More light.', 'exactness')).wait(60_000);
    expect(gone.state.phase).toBe('placing');
  });

  it('does not begin the recording anew where no pictures are looked at', () => {
    const walk = twoSets().comeIn().until('standing');
    walk.send({ kind: 'person', isPresent: false, unseen: 'not-followed' }).wait(3000);
    expect(walk.send({ kind: 'person', isPresent: true }).until('ready').recorded()).toEqual(['start']);
  });

  it('tolerates a moment out of place in the quiet stand', () => {
    const walk = twoSets().comeIn().until('standing').send(red('Step back.')).wait(800);
    walk.send(green).until('ready');
    expect(walk.recorded()).toEqual(['start']);
  });

  it('begins anyway where it is asked for, with time to walk back', () => {
    const walk = twoSets()
      .send({ kind: 'person', isPresent: true })
      .send(red('More light.'))
      .press('start-anyway');
    expect(walk.wait(5500).state.ruleSaidMs).toBeNull();
    expect(walk.wait(600).state.ruleSaidMs).not.toBeNull();
    expect(walk.until('ready').recorded()).toEqual(['start']);
  });
});

describe('advanceGuide(options, state, event): the voice', () => {
  const red = (line: string) => ({ kind: 'placing', isGood: false, line, cost: 'measuring' }) as const;
  const items = [
    smallItem({ feedback: 'every-repetition', tempo: { downSeconds: 3, pauseSeconds: 1, upSeconds: 2 } }),
    smallItem({ task: 'sliding-leg-squat', seatHeightCm: null, sides: ['left', 'right'] }),
    smallHold(),
  ];

  it('ends every line of whole sets, and none contradicts the screen', () => {
    const walk = new Walk(optionsFor(items)).send({ kind: 'person', isPresent: true });
    walk.send(red('Your right foot can’t be seen well. Move anything in front of it.')).wait(4000);
    walk.send(red('Turn your left shoulder back.')).wait(1000);
    while (walk.state.phase !== 'all-done') {
      walk.comeIn();
      if (walk.state.phase === 'standing') walk.send({ kind: 'stand', line: 'Stand still, arms at rest.' });
      if (walk.state.phase === 'working') {
        walk.send({ kind: 'repetition', heard: null }).wait(600);
        walk.send({
          kind: 'judged',
          heard: { verdict: 'out', direction: 'inward', cue: null, shortCue: null },
        });
      }
      if (walk.state.phase === 'bends') walk.wait(2000).send({ kind: 'repetition', heard: null });
      walk.wait(1900);
    }
    const { cut, contradicting } = judgeSpoken(walk.wait(10_000).voice.spoken);
    expect(walk.voice.spoken.length).toBeGreaterThan(60);
    expect(cut).toEqual([]);
    expect(contradicting).toEqual([]);
    for (const line of [
      'Sit down, right foot in front.',
      'Stand with your weight on your right leg',
      'Stand still, arms',
    ])
      expect(walk.voice.spoken.some(({ line: one }) => one.startsWith(line))).toBe(true);
  });

  it('is cut off by a stop alone', () => {
    const walk = atWork().repeat(1).press('stop-pain').wait(10_000);
    expect(judgeSpoken(walk.voice.spoken).cut.map(({ line }) => line)).toEqual(['One.']);
  });

  it('is not waited for for ever', () => {
    const walk = twoSets().comeIn();
    walk.voice.isSpeaking = () => true;
    expect(walk.until('working').state.isSpeaking).toBe(true);
  });
});

describe('advanceGuide(options, state, event): easy bends', () => {
  const slide = () => new Walk(optionsFor([smallItem({ task: 'sliding-leg-squat', seatHeightCm: null })]));
  const bend = { kind: 'repetition', heard: null } as const;

  it('asks for two of them before the recording, where the task shows little of the view', () => {
    const walk = slide().comeIn().until('bends').clear();
    walk.wait(2000).send(bend).wait(2000);
    expect(walk.state.phase).toBe('bends');
    expect(walk.recorded()).toEqual([]);
    expect(walk.send(bend).state.phase).toBe('standing');
    expect(walk.until('working').view().count).toBe(0);
    expect(walk.effects.filter(({ kind }) => kind === 'count')).toEqual([
      { kind: 'count', action: 'stop' },
      { kind: 'count', action: 'start', task: 'sliding-leg-squat' },
    ]);
  });

  it('continues without them after a while', () => {
    expect(slide().comeIn().until('bends').wait(15_100).state.phase).toBe('standing');
  });
});

describe('advanceGuide(options, state, event): ready', () => {
  it('waits for the start position where it can be seen', () => {
    const walk = twoSets()
      .send({ kind: 'posture', posture: 'standing' })
      .comeIn()
      .until('ready')
      .wait(10_000);
    expect(walk.state.phase).toBe('ready');
    walk.clear().send({ kind: 'posture', posture: 'seated' }).wait(700);
    expect(walk.state.phase).toBe('ready');
    expect(walk.wait(200).state.phase).toBe('countdown');
  });

  it('says again what to do, and begins anyway after a while', () => {
    const walk = twoSets().send({ kind: 'posture', posture: 'standing' }).comeIn().until('ready').clear();
    walk.wait(19_000);
    expect(walk.said()).toEqual(['Sit down, right foot in front.', 'Sit down, right foot in front.']);
    expect(walk.wait(1100).state.phase).toBe('countdown');
  });

  it('shows the countdown', () => {
    const walk = twoSets().comeIn().until('countdown');
    expect(walk.view().secondsLeft).toBe(3);
    expect(walk.wait(1100).view().secondsLeft).toBe(2);
  });
});

describe('advanceGuide(options, state, event): pauses', () => {
  const leave = { kind: 'person', isPresent: false } as const;
  const back = { kind: 'person', isPresent: true } as const;

  it('pauses when the person leaves, and continues with a new countdown when they are back', () => {
    const walk = atWork().repeat(2).send(leave).wait(1100).clear();
    expect(walk.state).toMatchObject({ phase: 'paused', pauseReason: 'left-picture', recording: 'paused' });
    walk.repeat(1).send(back).until('working');
    expect(walk.recorded()).toEqual(['resume']);
    expect(walk.said()).toEqual([
      'Good. Let’s carry on.',
      'Sit down, right foot in front.',
      'Three.',
      'Two.',
      'One.',
      'Go.',
    ]);
    expect(walk.view().count).toBe(2);
    expect(walk.repeat(3).until('set-done').state.results).toMatchObject([{ counted: 5, cutShort: null }]);
  });

  it.each(['no-pictures', 'not-followed', 'turned'] as const)(
    'does not send somebody back who is only unseen (%s), and continues by itself',
    (unseen) => {
      const walk = atWork()
        .repeat(2)
        .send({ ...leave, unseen })
        .wait(1100)
        .clear();
      expect(walk.state).toMatchObject({ phase: 'paused', pauseReason: unseen, recording: 'paused' });
      expect(walk.view().caption).not.toContain('left');
      // They may leave while it is so.
      expect(walk.send(leave).wait(100).state.pauseReason).toBe('left-picture');
      walk.send(back).until('working');
      expect(walk.recorded()).toEqual(['resume']);
    },
  );

  it('goes on with a new recording where the picture stays turned', () => {
    const walk = atWork()
      .repeat(2)
      .send({ ...leave, unseen: 'turned' })
      .wait(1100);
    walk.press('resume').comeIn().until('working').repeat(3).until('set-done');
    expect(walk.recorded()).toEqual(['start', 'pause', 'stop', 'start', 'stop']);
    expect(walk.state.results).toMatchObject([
      { counted: 2, prescribed: 5, cutShort: 'the picture was turned', isRecorded: true },
      { counted: 3, prescribed: 3, cutShort: null, isRecorded: true },
    ]);
  });

  it('bears a moment in which nobody is seen', () => {
    expect(atWork().send(leave).wait(800).send(back).wait(3000).state.phase).toBe('working');
  });

  it('waits for a press after a press, then for the person to be in place', () => {
    const walk = atWork().repeat(1).press('pause').wait(20_000);
    expect(walk.state).toMatchObject({ phase: 'paused', pauseReason: 'button', recording: 'paused' });
    walk.send(leave).press('resume').wait(5000);
    expect(walk.state).toMatchObject({ phase: 'placing', recording: 'paused' });
    expect(walk.comeIn().until('working').view().count).toBe(1);
    expect(walk.phases.filter((phase) => phase === 'standing')).toHaveLength(1);
  });

  it('pauses where the page is hidden, and waits for a press', () => {
    const walk = atWork().send({ kind: 'page', isVisible: false });
    expect(walk.state.pauseReason).toBe('page-hidden');
    walk.press('resume').wait(1000);
    expect(walk.state.phase).toBe('paused');
    walk.send({ kind: 'page', isVisible: true }).wait(5000);
    expect(walk.state.phase).toBe('paused');
    expect(walk.press('resume').until('working').state.recording).toBe('on');
  });

  it("keeps what was done before the camera's end as a part of its own, and records the rest anew", () => {
    const walk = atWork().repeat(2).send({ kind: 'camera', works: false });
    expect(walk.state).toMatchObject({ phase: 'paused', pauseReason: 'camera-ended', recording: 'off' });
    expect(walk.press('resume').said().at(-1)).toBe('The camera is not on yet.');
    walk.send({ kind: 'camera', works: true }).press('resume').until('working').repeat(3).until('set-done');
    expect(walk.recorded()).toEqual(['start', 'stop', 'start', 'stop']);
    expect(walk.state.results).toMatchObject([
      { number: 1, counted: 2, prescribed: 5, cutShort: 'the camera stopped', isRecorded: true },
      { number: 1, counted: 3, prescribed: 3, cutShort: null, isRecorded: true },
    ]);
  });

  it('keeps what was recorded where the camera ends in a pause', () => {
    const walk = atWork().repeat(2).press('pause').send({ kind: 'camera', works: false });
    expect(walk.recorded()).toEqual(['start', 'pause', 'stop']);
    expect(walk.state.results).toMatchObject([{ counted: 2, cutShort: 'the camera stopped' }]);
  });

  it('ends the set where the page is hidden after the last repetition', () => {
    const walk = atWork().repeat(5).send({ kind: 'page', isVisible: false });
    expect(walk.state.results).toMatchObject([{ counted: 5, cutShort: null, isRecorded: true }]);
  });

  it('stops the clock of a rest too', () => {
    const walk = atWork().repeat(5).until('resting').wait(10_000).press('pause').wait(60_000);
    expect(walk.view().secondsLeft).toBe(30);
    expect(walk.press('resume').wait(29_000).state.phase).toBe('resting');
    expect(walk.wait(1200).state.phase).not.toBe('resting');
  });
});

describe('advanceGuide(options, state, event): ends', () => {
  it.each(['placing', 'standing', 'ready', 'countdown', 'working'] as const)(
    'stops for pain in the phase %s, and says what the plan says',
    (phase) => {
      const walk = twoSets().comeIn().until(phase).press('stop-pain');
      expect(walk.state.phase).toBe('stopped');
      expect(walk.said().at(-1)).toBe('Stopped. Hold on to something or sit down. Call the practice.');
      expect(walk.state.stop).toEqual({ reason: 'pain', line: walk.said().at(-1) });
      expect(walk.state.results).toMatchObject([{ counted: 0, cutShort: 'pain' }]);
      expect(walk.state.recording).toBe('off');
    },
  );

  const ends = [
    { press: 'stop-gave-way', cutShort: 'the knee gave way', says: /sit down\. Have it seen first\.$/ },
    { press: 'stop-locked', cutShort: 'the knee locked or got stuck', says: /Have it seen first\.$/ },
    { press: 'stop-dizzy', cutShort: 'dizzy or unsteady', says: /Sit down, .* emergency number at once\.$/ },
    { press: 'stop-other', cutShort: 'stopped for another reason', says: /^Ended\./ },
  ] as const;
  it.each(ends)('stops and asks why; $press ends it with what to do', ({ press, cutShort, says }) => {
    const walk = atWork().repeat(2).press('stop');
    expect(walk.state).toMatchObject({ phase: 'paused', pauseReason: 'stop', recording: 'paused' });
    expect(walk.said().at(-1)).toMatch(/Hold on to something or sit down\. Then choose the reason/);
    expect(walk.wait(60_000).state.phase).toBe('paused');
    walk.press(press);
    expect(walk.state).toMatchObject({ phase: 'stopped', results: [{ counted: 2, cutShort }] });
    expect(walk.said().at(-1)).toMatch(says);
  });

  it.each(['placing', 'standing', 'ready', 'countdown', 'working', 'set-done', 'resting'] as const)(
    'carries on from %s where the stop was a mistake',
    (phase) => {
      const walk = twoSets().comeIn();
      if (phase === 'set-done' || phase === 'resting') walk.until('working').repeat(5);
      walk.until(phase).press('stop').wait(2000).press('resume');
      expect(walk.until('working').state.stop).toBeNull();
    },
  );

  it('keeps all repetitions where it is stopped in the moment after the last one', () => {
    const walk = atWork().repeat(5).press('stop');
    expect(walk.state).toMatchObject({ phase: 'paused', results: [{ counted: 5, cutShort: null }] });
    expect(walk.press('stop-pain').state).toMatchObject({ phase: 'stopped', results: [{ cutShort: null }] });
  });

  it('asks why after somebody left the picture, too, and does not go on when they are back', () => {
    const walk = atWork().send({ kind: 'person', isPresent: false }).until('paused').press('stop');
    expect(walk.comeIn().wait(10_000).state).toMatchObject({ phase: 'paused', pauseReason: 'stop' });
  });

  it('says when to stop once, before the first movement, and waits until it is said', () => {
    const walk = atWork().repeat(5).until('resting').until('working').repeat(5).until('all-done');
    const rule = /^If it hurts more than three of ten, stop and sit down\./;
    expect(walk.said().filter((line) => rule.test(line))).toHaveLength(1);
    const first = twoSets().comeIn().until('standing');
    expect(first.said().at(-2)).toMatch(rule);
    // Eighteen words at 400 ms each.
    expect(first.state.nowMs - first.state.ruleSaidMs!).toBeGreaterThanOrEqual(18 * 400);
    const none = new Walk({ ...optionsFor([smallItem()]), painLimit: 0 }).comeIn().until('standing');
    expect(none.said()).toContain('If it hurts, stop and sit down. Walk out of the picture, and it pauses.');
  });

  it('keeps what was done before the pain', () => {
    const walk = atWork().repeat(3).press('stop-pain').wait(60_000);
    expect(walk.state.results).toMatchObject([{ counted: 3, cutShort: 'pain', isRecorded: true }]);
    expect(walk.state.phase).toBe('stopped');
  });

  it('stops for pain in a rest without another result', () => {
    const walk = atWork().repeat(5).until('resting').press('stop-pain');
    expect(walk.state.results).toHaveLength(1);
    expect(walk.state.stop?.reason).toBe('pain');
  });

  it('ends everything by a press', () => {
    const walk = atWork().repeat(1).press('end');
    expect(walk.state).toMatchObject({ phase: 'stopped', stop: { reason: 'ended' } });
    expect(walk.state.results).toMatchObject([{ counted: 1, cutShort: 'ended early' }]);
    expect(twoSets().press('end').state.results).toEqual([]);
  });

  it('ends or skips a set by a press, and continues with the next', () => {
    const walk = atWork()
      .repeat(2)
      .press('end-set')
      .until('resting')
      .wait(100)
      .press('skip-rest')
      .press('end-set');
    expect(walk.until('all-done').state.results).toMatchObject([
      { number: 1, counted: 2, cutShort: 'ended early', isRecorded: true },
      { number: 2, counted: 0, cutShort: 'skipped', isRecorded: false },
    ]);
  });

  it('skips the rest by a press', () => {
    const walk = atWork();
    walk.tellsPain = false;
    walk.repeat(5).until('resting').press('skip-rest');
    // How much it hurt is answered first.
    expect(walk.state.phase).toBe('resting');
    walk.send({ kind: 'pain-told' }).send({ kind: 'person', isPresent: false });
    expect(walk.press('skip-rest').state).toMatchObject({ phase: 'placing', stepIndex: 1 });
  });

  it('goes straight on where there is no rest', () => {
    const walk = atWork(new Walk(optionsFor([smallItem({ restSeconds: 0 })]))).repeat(5);
    walk.until('set-done').until('standing');
    expect(walk.state).toMatchObject({ stepIndex: 1 });
    expect(walk.said().join(' ')).not.toMatch(/Rest for/);
  });

  it('waits with the next set until it is answered how much the last one hurt, and asks again', () => {
    const walk = atWork();
    walk.tellsPain = false;
    walk.repeat(5).until('resting').clear().wait(100_000);
    expect(walk.state.phase).toBe('resting');
    const asked = 'Before the next set, choose on the screen how much it hurt.';
    expect(walk.said().length).toBeGreaterThan(2);
    expect(new Set(walk.said())).toEqual(new Set([asked]));
    walk.send({ kind: 'pain-told' }).wait(200);
    expect(walk.state).toMatchObject({ phase: 'placing', stepIndex: 1 });
    // The answer is of that set alone.
    expect(walk.until('working').repeat(5).state.isPainTold).toBe(false);
  });

  it('asks nothing about a set that was skipped', () => {
    const walk = twoSets().press('end-set');
    walk.tellsPain = false;
    expect(walk.until('resting').until('placing').state.stepIndex).toBe(1);
    expect(walk.said().join(' ')).not.toMatch(/how much it hurt/);
  });

  it('announces the end of a rest', () => {
    const walk = atWork().repeat(5).until('resting').clear().wait(39_900);
    expect(walk.said()).toEqual(['Ten seconds left.']);
    expect(walk.tones()).toEqual(['tick', 'tick', 'tick']);
  });
});

describe('advanceGuide(options, state, event): feedback', () => {
  const last = (
    feedback: 'every-repetition' | 'only-outside' | 'after-the-set' | 'none',
    outsideSound = true,
  ) => {
    const options = { ...optionsFor([smallItem({ feedback })]), outsideSound };
    const walk = atWork(new Walk(options)).clear().repeat(1, 'out');
    return [walk.tones()[0], walk.said()[0]];
  };

  it('follows the plan', () => {
    const told = 'One. Let the knee go out a little, over the foot.';
    expect(last('every-repetition')).toEqual(['outside', told]);
    expect(last('only-outside')).toEqual(['outside', told]);
    expect(last('after-the-set')).toEqual(['tick', 'One.']);
    expect(last('none')).toEqual(['tick', 'One.']);
    expect(last('only-outside', false)).toEqual(['tick', told]);
  });

  it('beats the tempo from "go", the way up first from a seat', () => {
    const tempo = { downSeconds: 3, pauseSeconds: 1, upSeconds: 2 };
    const walk = new Walk(optionsFor([smallItem({ tempo })])).comeIn().until('working').clear();
    const at = [0, 2, 3, 6, 8].map((second) => {
      walk.wait(second * 1000 + 100 - (walk.state.nowMs - walk.state.sinceMs));
      return walk.tones().at(-1);
    });
    expect(at).toEqual([undefined, 'turn', 'down', 'up', 'turn']);
    expect(walk.tones()).toEqual(['turn', 'down', 'up', 'turn']);
  });

  it('asks once in a while where no repetition comes', () => {
    const walk = atWork().clear().wait(41_000);
    expect(walk.said()).toHaveLength(2);
    expect(walk.said()[0]).toMatch(/^Carry on when you are ready/);
  });

  it('says so where the device can not count along, and leaves the end of the set to the person', () => {
    const walk = atWork().repeat(2).send({ kind: 'counting', works: false }).repeat(6);
    expect(walk.said().filter((line) => line.startsWith('Please count'))).toHaveLength(1);
    expect(walk.view().count).toBeNull();
    expect(walk.state.count).toBe(5);
    expect(walk.state).toMatchObject({ phase: 'working', recording: 'on' });
    walk.press('end-set');
    expect(walk.state.results).toMatchObject([{ counted: null, cutShort: null, isRecorded: true }]);
  });

  it('says at "go" that the device can not count along where that was known before', () => {
    const walk = twoSets().send({ kind: 'counting', works: false }).comeIn().until('working');
    expect(walk.said().at(-1)).toMatch(/^Please count/);
  });
});

describe('advanceGuide(options, state, event): holds', () => {
  /** Two holds of 12 s, 15 s of rest between. */
  const hold = () => new Walk(optionsFor([smallHold()]));

  it('needs no camera, and times holds and rest', () => {
    const walk = hold().until('working').clear().until('all-done');
    expect(walk.recorded()).toEqual([]);
    expect(walk.said()).toEqual([
      'Ten seconds left.',
      'Three.',
      'Two.',
      'One.',
      'And relax. Rest for fifteen seconds.',
      'Three.',
      'Two.',
      'One.',
      'Hold.',
      'Ten seconds left.',
      'Three.',
      'Two.',
      'One.',
      'And relax.',
      'Set done. Well done.',
      'That was everything. Well done.',
    ]);
    expect(walk.state.results).toMatchObject([
      { task: 'quad-press-hold', heldMs: 24_000, counted: null, prescribed: null, isRecorded: false },
    ]);
  });

  it('stops the clock in a pause', () => {
    const walk = hold().until('working').wait(5000).press('pause').wait(30_000);
    expect(walk.view().hold).toMatchObject({ phase: 'holding', hold: 1, secondsLeft: 7 });
    expect(walk.press('resume').until('working').view().hold!.secondsLeft).toBe(7);
  });

  it('tolerates an empty picture or a camera that ends', () => {
    const walk = hold().until('working').send({ kind: 'person', isPresent: false });
    walk.send({ kind: 'camera', works: false }).wait(3000);
    expect(walk.state.phase).toBe('working');
  });

  it('keeps the time that was held where it is stopped', () => {
    const walk = hold().until('working').wait(5000).press('stop-pain');
    expect(walk.state.results).toMatchObject([{ heldMs: 5000, cutShort: 'pain' }]);
  });

  it('counts a gap between two ticks, as on a device that slept, as one second at most', () => {
    const walk = hold().until('working').wait(5000);
    walk.send({ kind: 'tick', nowMs: walk.state.nowMs + 60_000 });
    expect(walk.view().hold!.heldMs).toBe(6000);
  });
});
