import { exercises } from './en/exercises';
import { home } from './en/home';
import { placing } from './en/placing';
import { plan } from './en/plan';
import { report } from './en/report';
import { result } from './en/result';
import { safety } from './en/safety';
import { sending } from './en/sending';
import { spoken } from './en/spoken';
import { start } from './en/start';
import { trouble } from './en/trouble';

/** Everything that a patient reads or hears, in English: whole messages in the ICU format, by key. */
export const english = {
  ...spoken,
  ...placing,
  ...exercises,
  ...safety,
  ...plan,
  ...result,
  ...report,
  ...home,
  ...sending,
  ...start,
  ...trouble,
} as const;

export type MessageKey = keyof typeof english;
