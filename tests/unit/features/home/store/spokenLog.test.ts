import { describe, expect, it } from 'vitest';
import type { FeedbackMode } from '#core/protocol/feedback';
import type { SpokenLine } from '#device/sound/sound';
import { judgeSpoken } from '#tools/commands/tools/home/judgeSpoken';
import { createSilentSound } from '../../../../support/silentSound';
import { smallItem, smallPlan } from '../../../../support/smallPlan';
import { StubVoice } from '../../../../support/stubVoice';
import { openFakeHome, settle } from './fakeHome';

/** A voice is heard this often, ms. */
const everyMs = 40;

/** All that is said from the camera to the last word of a plan of two sets, of three movements each. */
async function wholeSession(feedback: FeedbackMode) {
  const items = [smallItem({ repetitions: 3, feedback })];
  const plan = smallPlan({ items, painLimit: 3 });
  const asked: string[] = [];
  let voice = new StubVoice();
  const opened = await openFakeHome({}, (adapters, world) => {
    adapters.createSound = (onCaption) => {
      voice = new StubVoice(onCaption);
      const { unlock, tone, setOn, close } = createSilentSound();
      const say = (line: SpokenLine) => {
        asked.push(line.line);
        voice.say(line);
      };
      return { unlock, tone, setOn, close, say, isSpeaking: () => voice.isSpeaking(), hasVoice: () => true };
    };
    adapters.every(everyMs, () => voice.wait(everyMs, world.phase()));
  });
  const { home, world } = opened;
  await home.openPlanFile(new File([JSON.stringify(plan)], 'my-plan.json'));
  home.setConfirmed(true);
  home.confirm();
  home.noneOfThese();
  home.setPainBefore(2);
  home.goOnFromPain();
  await home.openCamera();
  home.startExercise();
  home.setFurniturePlaced(true);
  await settle();
  await world.until('resting');
  await world.wait(9000);
  home.setPainDuring(0, 1);
  await world.until('all-done');
  await world.wait(6000);
  expect(voice.isSpeaking()).toBe(false);
  return { asked, spoken: voice.spoken };
}

describe('what is spoken in a whole session', () => {
  it.each(['every-repetition', 'only-outside', 'after-the-set'] as const)(
    'is all heard and contradicts no screen, with feedback %s',
    async (feedback) => {
      const { asked, spoken } = await wholeSession(feedback);
      expect(spoken.map(({ line }) => line)).toEqual(asked);
      const { cut, contradicting } = judgeSpoken(spoken);
      expect(cut).toEqual([]);
      expect(contradicting).toEqual([]);
    },
  );
});
