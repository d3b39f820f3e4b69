import { describe, expect, it } from 'vitest';
import { judgeSpoken, type Spoken } from '#tools/commands/tools/home/judgeSpoken';

const spoken = (line: string, inPhaseMs: Spoken['inPhaseMs'], lengthMs?: number): Spoken => {
  const spokenMs = Object.values(inPhaseMs).reduce((sum, ms) => sum + ms, 0);
  return { line, inPhaseMs, spokenMs, lengthMs: lengthMs ?? spokenMs };
};

describe('judgeSpoken(spoken)', () => {
  it('finds lines of which less than four fifths were heard', () => {
    const cut = spoken('Sit down, right foot in front. Two repetitions.', { ready: 300 }, 3000);
    const almost = spoken('Set done. Well done.', { 'set-done': 1300 }, 1600);
    expect(judgeSpoken([cut, almost])).toEqual({ cut: [cut], contradicting: [] });
  });

  it.each<[string, Spoken['inPhaseMs'], boolean]>([
    ['Stand so that your left foot can be seen, and keep still.', { standing: 400, ready: 3000 }, true],
    ['Stand so that your left foot can be seen, and keep still.', { standing: 3400 }, false],
    ['Good. Now stand still on both feet.', { standing: 2300, placing: 600 }, true],
    ['Good. Now stand still on both feet.', { standing: 2500, ready: 400 }, false],
    ['Sit down, right foot in front. Five repetitions.', { ready: 500, countdown: 1500 }, true],
    ['Stand on your right leg.', { ready: 2000 }, false],
    ['Step back by about half a metre.', { standing: 2000 }, true],
    ['Three.', { countdown: 600 }, false],
    ['Three. Two more.', { countdown: 900 }, true],
    ['Belt level.', { working: 900 }, false],
    ['Let the knee go out a little, over the foot.', { finishing: 1000, 'set-done': 1500 }, true],
    ['If it hurts more than 3, sit down.', { ready: 2500 }, false],
  ])('of "%s" in %o: whether it contradicts the screen is %s', (line, inPhaseMs, contradicts) => {
    expect(judgeSpoken([spoken(line, inPhaseMs)]).contradicting).toHaveLength(contradicts ? 1 : 0);
  });
});
