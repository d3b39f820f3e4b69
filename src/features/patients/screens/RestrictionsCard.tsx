import { useState } from 'react';
import { sides } from '#core/protocol/side';
import { longestCaseText } from '#documents/patient/caseEntries';
import { restrictionWords, untilWords } from '#documents/patient/restrictionWords';
import { planRanges } from '#documents/plan/planRanges';
import { capitalised } from '#words/capitalised';
import { dayWords, isoDay } from '#words/dateWords';
import { usePatients, usePatientsState } from '../patientsContext';
import { overrideSentence } from '../rules/caseWords';
import { restrictionKinds, restrictionOf, type RestrictionDraft } from '../rules/restrictionOf';
import { DayField } from './DayField';
import { EntryField } from './EntryField';
import { EntryForm } from './EntryForm';
import { FoldCard } from './FoldCard';
import { LineField } from './LineField';
import { OpensForm } from './OpensForm';
import { TakeOut } from './TakeOut';

/** What a surgeon or doctor allows for a time; plans are held against it. */
export function RestrictionsCard() {
  const all = usePatientsState((state) => state.patient?.prescribedRestrictions) ?? [];
  const overrides = usePatientsState((state) => state.patient?.overrides) ?? [];
  const today = usePatientsState((state) => isoDay(new Date(state.readAtMs).toISOString()));
  const kept = all.filter(({ withdrawn }) => withdrawn === null);
  return (
    <FoldCard
      id="restrictions-title"
      title="Restrictions set by a surgeon or doctor"
      empty={kept.length + overrides.length === 0 ? 'None.' : null}
    >
      {kept.length === 0 && (
        <p className="soft">A plan beyond one is refused until somebody signs over it.</p>
      )}
      {kept.length > 0 && (
        <ul className="programme-list">
          {kept.map((restriction) => {
            const { id, setBy, until, by, at } = restriction;
            const isOver = until !== null && until < today;
            return (
              <li key={id}>
                {capitalised(setBy)}: {restrictionWords(restriction)}, {untilWords(until)}
                {isOver && ', which is over'}{' '}
                <span className="small soft">
                  ({by}, {dayWords(at)})
                </span>{' '}
                <TakeOut list="prescribedRestrictions" id={id} what="this restriction" />
              </li>
            );
          })}
        </ul>
      )}
      {overrides.length > 0 && (
        <ol className="small programme-decisions" aria-label="Signed over">
          {overrides.map((override) => (
            <li key={override.id}>{overrideSentence(override)}</li>
          ))}
        </ol>
      )}
      <OpensForm label="Add a restriction">{(close) => <RestrictionForm onClose={close} />}</OpensForm>
    </FoldCard>
  );
}

function RestrictionForm({ onClose }: { onClose: () => void }) {
  const patients = usePatients();
  const surgery = usePatientsState((state) => state.patient?.surgery ?? null);
  const painful = usePatientsState((state) => state.patient?.painfulSide ?? null);
  const [draft, setDraft] = useState<RestrictionDraft>({
    kind: 'bend',
    side: surgery?.side ?? (painful === 'left' ? 'left' : 'right'),
    mostDeg: '',
    setBy: 'surgeon',
    until: '',
  });
  const change = (part: Partial<RestrictionDraft>) => setDraft({ ...draft, ...part });
  const found = restrictionOf(draft);
  const keep = (by: string) =>
    patients.record((patient, entry) => {
      if (typeof found === 'string') return patient;
      const made = { ...entry, by, withdrawn: null, ...found };
      return { ...patient, prescribedRestrictions: [...patient.prescribedRestrictions, made] };
    });
  return (
    <EntryForm
      lack={() => (typeof found === 'string' ? found : null)}
      answer="Keep the restriction"
      onKeep={keep}
      onClose={onClose}
    >
      <EntryField label="What is restricted">
        {(id) => (
          <select
            id={id}
            className="text-input"
            value={draft.kind}
            onChange={({ target }) => change({ kind: target.value as RestrictionDraft['kind'] })}
          >
            {restrictionKinds.map(({ kind, words }) => (
              <option key={kind} value={kind}>
                {words}
              </option>
            ))}
          </select>
        )}
      </EntryField>
      <EntryField label="Which leg">
        {(id) => (
          <select
            id={id}
            className="text-input"
            value={draft.side}
            onChange={({ target }) => change({ side: target.value as RestrictionDraft['side'] })}
          >
            {sides.map((side) => (
              <option key={side}>{side}</option>
            ))}
          </select>
        )}
      </EntryField>
      {draft.kind === 'bend' && (
        <LineField
          label={`Bends at most, degrees from straight, 0 to ${planRanges.bendDeg.max}`}
          value={draft.mostDeg}
          maxLength={5}
          inputMode="decimal"
          onChange={(mostDeg) => change({ mostDeg })}
        />
      )}
      <DayField
        label="Until and with; empty: until further notice"
        value={draft.until}
        onChange={(until) => change({ until })}
      />
      <LineField
        label="Set by (no name)"
        value={draft.setBy}
        maxLength={longestCaseText.setBy}
        onChange={(setBy) => change({ setBy })}
      />
    </EntryForm>
  );
}
