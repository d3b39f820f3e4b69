import { Choice } from '#ui/components/Choice';
import type { Language } from '#words/messages/languages';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';
import { catalogueOf } from './catalogueOf';

const names: { id: Language; name: string }[] = [
  { id: 'en', name: 'English' },
  { id: 'es', name: 'Spanish' },
];

/** Sentences that a plan begins with. */
const firstWords = [
  ['beyondPainLimit', 'caution.first-beyond-limit'],
  ['ifItGivesWay', 'caution.first-gives-way'],
] as const;

/** What the patient reads and hears everything in; sentences that the therapist has not touched change with it. */
export function PlanLanguage() {
  const writing = usePlanWriting();
  const draft = usePlanWritingState((state) => state.draft);
  const change = async (language: Language) => {
    const [from, to] = await Promise.all([catalogueOf(draft.language), catalogueOf(language)]);
    const untouched = firstWords.filter(([field, key]) => draft[field] === from[key]);
    writing.change({ language, ...Object.fromEntries(untouched.map(([field, key]) => [field, to[key]])) });
  };
  return (
    <Choice
      label="Language of the patient’s pages; your own words stay as you write them"
      options={names}
      value={draft.language}
      onChange={(language) => void change(language)}
    />
  );
}
