type Voice = Pick<SpeechSynthesisVoice, 'lang' | 'localService' | 'default'>;

/**
 * An English voice of the device itself; a remote voice would be sent the words.
 *
 * @returns null where there is none
 */
export function findVoice<AnyVoice extends Voice>(voices: readonly AnyVoice[]): AnyVoice | null {
  const local = voices.filter(({ lang, localService }) => localService && /^en([-_]|$)/i.test(lang));
  return local.find((voice) => voice.default) ?? local[0] ?? null;
}
