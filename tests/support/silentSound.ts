import type { Sound, SpokenLine } from '#device/sound/sound';

/** A silent sound output that records what it was asked to play. */
export interface SilentSound extends Sound {
  said: SpokenLine[];
  tones: string[];
  isUnlocked: boolean;
}

export function createSilentSound(onCaption: (caption: string) => void = () => undefined): SilentSound {
  const sound: SilentSound = {
    said: [],
    tones: [],
    isUnlocked: false,
    unlock() {
      sound.isUnlocked = true;
    },
    say(line) {
      sound.said.push(line);
      onCaption(line.caption);
    },
    isSpeaking: () => false,
    tone: (kind) => sound.tones.push(kind),
    setOn: () => undefined,
    hasVoice: () => false,
    close: () => undefined,
  };
  return sound;
}
