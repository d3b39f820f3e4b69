import { useState, type FormEvent, type ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { onsets, type Onset } from '#documents/patient/caseEntries';
import {
  longestPatientText,
  painfulSides,
  painSites,
  type PainfulSide,
  type PatientNotes,
} from '#documents/patient/patientDocument';
import { planBounds, planRanges } from '#documents/plan/planRanges';
import { onsetWords, sideWords, siteWords } from '../rules/patientWords';

interface Props {
  notes: PatientNotes;
  onSave: (notes: PatientNotes) => void;
  onCancel: () => void;
}

const limits = Array.from({ length: planRanges.painLimit.max + 1 }, (_, limit) => String(limit));

/** What is noted of a patient. */
export function NotesForm({ notes, onSave, onCancel }: Props) {
  const [draft, setDraft] = useState<PatientNotes>(() => {
    const { painfulSide, since, onset, sites, goals, painRule, restrictions, surgery } = notes;
    return { painfulSide, since, onset, sites, goals, painRule, restrictions, surgery };
  });
  const [lacks, setLacks] = useState<string | null>(null);
  const change = (part: Partial<PatientNotes>) => setDraft({ ...draft, ...part });
  const { painfulSide, since, onset, sites, goals, painRule, restrictions, surgery } = draft;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    if (surgery !== null && (surgery.what.trim() === '' || surgery.on === ''))
      return setLacks('Say what the operation was, and on which day.');
    onSave({ ...draft, goals: goals.trim(), restrictions: restrictions.trim() });
  };
  return (
    <form className="dialog-form patient-form" onSubmit={submit}>
      <Field label="Painful side">
        <select
          className="text-input"
          value={painfulSide ?? ''}
          onChange={({ target }) =>
            change({ painfulSide: target.value === '' ? null : (target.value as PainfulSide) })
          }
        >
          <option value="">not noted</option>
          {painfulSides.map((side) => (
            <option key={side} value={side}>
              {sideWords[side]}
            </option>
          ))}
        </select>
      </Field>
      <Field label="Since when">
        <input
          type="date"
          className="text-input"
          value={since ?? ''}
          onChange={({ target }) => change({ since: target.value === '' ? null : target.value })}
        />
      </Field>
      <Field label="How it began">
        <select
          className="text-input"
          value={onset ?? ''}
          onChange={({ target }) => change({ onset: target.value === '' ? null : (target.value as Onset) })}
        >
          <option value="">not noted</option>
          {onsets.map((one) => (
            <option key={one} value={one}>
              {onsetWords[one]}
            </option>
          ))}
        </select>
      </Field>
      <fieldset className="patient-sites">
        <legend className="field-label">Where it hurts</legend>
        {painSites.map((site) => (
          <label key={site}>
            <input
              type="checkbox"
              checked={sites.includes(site)}
              onChange={({ target }) =>
                change({
                  sites: painSites.filter((one) => (one === site ? target.checked : sites.includes(one))),
                })
              }
            />{' '}
            {siteWords[site]}
          </label>
        ))}
      </fieldset>
      <Field label="Pain agreed, up to (of 10)">
        <select
          className="text-input"
          value={painRule === null ? '' : String(painRule.limit)}
          onChange={({ target }) =>
            change({
              painRule:
                target.value === '' ? null : { limit: Number(target.value), then: painRule?.then ?? '' },
            })
          }
        >
          <option value="">not noted</option>
          {limits.map((limit) => (
            <option key={limit}>{limit}</option>
          ))}
        </select>
      </Field>
      {painRule !== null && (
        <Field label="What was agreed to do above it">
          <input
            className="text-input"
            maxLength={planBounds.beyondPainLimit}
            value={painRule.then}
            onChange={({ target }) => change({ painRule: { ...painRule, then: target.value } })}
          />
        </Field>
      )}
      <Field label="Knee surgery">
        <select
          className="text-input"
          value={surgery?.side ?? ''}
          onChange={({ target }) =>
            change({
              surgery:
                target.value === ''
                  ? null
                  : { what: '', on: '', ...surgery, side: target.value === 'left' ? 'left' : 'right' },
            })
          }
        >
          <option value="">none is noted</option>
          <option value="left">left knee</option>
          <option value="right">right knee</option>
        </select>
      </Field>
      {surgery !== null && (
        <>
          <Field label="What was done">
            <input
              className="text-input"
              maxLength={planBounds.freeName}
              value={surgery.what}
              onChange={({ target }) => change({ surgery: { ...surgery, what: target.value } })}
            />
          </Field>
          <Field label="Day of the surgery">
            <input
              type="date"
              className="text-input"
              value={surgery.on}
              onChange={({ target }) => change({ surgery: { ...surgery, on: target.value } })}
            />
          </Field>
        </>
      )}
      <Field label="Restrictions, in words">
        <textarea
          className="text-input"
          rows={2}
          maxLength={longestPatientText.restrictions}
          value={restrictions}
          onChange={({ target }) => change({ restrictions: target.value })}
        />
      </Field>
      <Field label="Goals, in the patient’s words">
        <textarea
          className="text-input"
          rows={2}
          maxLength={longestPatientText.goals}
          value={goals}
          onChange={({ target }) => change({ goals: target.value })}
        />
      </Field>
      {lacks !== null && <p role="alert">{lacks}</p>}
      <p className="small soft">
        This stays on this device and in its backups, and goes sealed to colleagues where the practice shares.
        No names.
      </p>
      <div className="dialog-answers">
        <Button className="button" onPress={onCancel}>
          Cancel
        </Button>
        <Button type="submit" className="button button-primary">
          Keep
        </Button>
      </div>
    </form>
  );
}

function Field({ label, children }: { label: string; children: ReactNode }) {
  return (
    <label className="field">
      <span className="field-label">{label}</span>
      {children}
    </label>
  );
}
