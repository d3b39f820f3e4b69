type Voice = Pick<SpeechSynthesisVoice, 'lang' | 'localService' | 'default'>;

/**
 * A voice of the device itself that speaks a language; a remote voice would be sent the words.
 *
 * @param language  as the first part of a language tag: 'en', 'es'
 * @returns null where there is none
 */
export function findVoice<AnyVoice extends Voice>(
  voices: readonly AnyVoice[],
  language: string,
): AnyVoice | null {
  const local = voices.filter(
    ({ lang, localService }) => localService && lang.toLowerCase().split(/[-_]/)[0] === language,
  );
  return local.find((voice) => voice.default) ?? local[0] ?? null;
}
