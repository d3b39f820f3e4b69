import { exercises } from './es/exercises';
import { home } from './es/home';
import { placing } from './es/placing';
import { plan } from './es/plan';
import { report } from './es/report';
import { result } from './es/result';
import { safety } from './es/safety';
import { sending } from './es/sending';
import { spoken } from './es/spoken';
import { start } from './es/start';
import { trouble } from './es/trouble';
import type { Catalogue } from './message';

/** Everything that a patient reads or hears, in Spanish: addressed as 'tú', in words that are usual everywhere. */
export const spanish: Catalogue = {
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
};
