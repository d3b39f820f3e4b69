/** Control, format (bidirectional and zero-width among them), private, unassigned and combining characters. */
const unseen = /[\p{Cc}\p{Cf}\p{Co}\p{Cn}\p{Cs}\p{Me}\u{115F}\u{1160}\u{3164}\u{FFA0}]/gu;

/**
 * A pseudonym in the one form in which it is kept and compared: Unicode NFKC, without characters that are not
 * seen, and with single spaces. Empty where nothing is left.
 */
export function plainName(text: string): string {
  return text.normalize('NFKC').replace(/\s+/gu, ' ').replace(unseen, '').replace(/ +/g, ' ').trim();
}

const scripts = [/\p{Script=Latin}/u, /\p{Script=Cyrillic}/u, /\p{Script=Greek}/u];

/** Whether a name has letters of alphabets that look alike, such as Latin and Cyrillic. */
export function mixesAlphabets(name: string): boolean {
  return scripts.filter((script) => script.test(name)).length > 1;
}
