import { createSpeech, type SpeechWorld } from './createSpeech';
import { createTones } from './createTones';
import type { CaptionListener, Sound } from './sound';

/**
 * The device's voice and tones.
 *
 * @param onCaption  called with each caption when its line begins
 */
export function createSound(
  onCaption: CaptionListener,
  world?: SpeechWorld,
  createContext?: () => AudioContext,
): Sound {
  const speech = createSpeech(onCaption, world);
  const tones = createTones(createContext);
  return {
    unlock() {
      tones.unlock();
      speech.unlock();
    },
    say: speech.say,
    isSpeaking: speech.isSpeaking,
    tone: tones.play,
    setOn(on) {
      speech.setOn(on.voice);
      tones.setOn(on.tones);
    },
    hasVoice: speech.hasVoice,
    close() {
      speech.close();
      tones.close();
    },
  };
}
