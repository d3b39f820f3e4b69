import type { ProblemKind } from '#core/problem';

/**
 * What a document turned out to be: its value, or what is wrong as it follows its subject: 'is damaged at …'.
 * `whatNext` is a sentence, where another copy would be no better.
 */
export type DocumentContent<Value> = { value: Value } | { fault: string; whatNext?: string };

/** What is said of a document that can't be read. */
export interface DocumentWords {
  /** Of data that is something else, and of text that is not JSON; whole sentences. */
  notOne: string;
  notJson: string;
  /** Of text that holds more than any document does. */
  tooMuch: string;
  /** Of a version that this program does not know. */
  newer: (version: number, known: number) => string;
  /**
   * @param fault  as it follows the document as the subject: 'is damaged at …'
   * @param whatNext  a sentence, where another copy would be no better
   */
  faulty: (fault: string, whatNext?: string) => string;
}

/** One kind of versioned document: how to recognise, migrate and read it. */
export interface DocumentKind<Value> {
  problem: ProblemKind;
  format: string;
  /** The latest version. */
  version: number;
  /** Migrates a document of an older version to the latest one; left out where there is none. */
  bringUp?(older: object, version: number): object;
  /** Reads untrusted data as the latest version. */
  read(data: unknown): DocumentContent<Value>;
  words: DocumentWords;
}

/**
 * The words for a document that is a file of its own.
 *
 * @param name  as it follows 'this is not a': 'plan'
 * @param chooseAnother  what to do where it is something else, a sentence
 * @param getAgain  what to do where it is damaged, a sentence
 */
export function fileWords(name: string, chooseAnother: string, getAgain: string): DocumentWords {
  return {
    notOne: `This is not a ${name}. ${chooseAnother}`,
    notJson: `This is not a ${name}: it is not JSON. ${chooseAnother}`,
    ...faultWords(`This ${name}`, getAgain),
  };
}

function faultWords(subject: string, getAgain: string): Omit<DocumentWords, 'notOne' | 'notJson'> {
  return {
    tooMuch: `${subject} holds more than one can. ${getAgain}`,
    newer: (version, known) =>
      `${subject} is of version ${version}; this program reads up to ${known}. Update the program.`,
    faulty: (fault, whatNext = getAgain) => `${subject} ${fault}. ${whatNext}`,
  };
}

/** The words for documents that this program saves: recordings and sessions. */
export const savedFileWords = (name: string): DocumentWords =>
  fileWords(name, 'Choose a file that was saved here.', 'Save it again where it came from.');

/**
 * The words for the first line of a file of parts.
 *
 * @param name  as it follows 'It is not a': 'backup'
 * @param getAgain  what to do where it is damaged, a sentence
 */
export function headWords(name: string, getAgain: string): DocumentWords {
  const notOne = `It is not a ${name} from Overfoot.`;
  return { notOne, notJson: notOne, ...faultWords('It', getAgain) };
}
