import { useId, useState } from 'react';
import { Button } from 'react-aria-components';
import { longestPatientText, type Decision } from '#documents/patient/patientDocument';
import { itemName } from '#documents/plan/itemName';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { useInitials } from '#features/sharing/screens/useInitials';
import { usePatients, usePatientsState } from '../patientsContext';
import { decisionOn, reasonSentences } from '../rules/decisionOn';
import { decisionSentence, nextWords, proposalWords } from '../rules/programmeWords';
import { changesPlan, draftOf, itemProposals, type ItemProposal } from '../rules/proposals';
import { Thresholds } from './Thresholds';
import './programme.css';

/** What the rules propose for each exercise of the plan in force; the therapist decides, and signs. */
export function ProgrammeCard({ sessions }: { sessions: readonly ListedSession[] }) {
  const [plan] = usePatientsState((state) => state.plans);
  const thresholds = usePatientsState((state) => state.patient?.thresholds);
  const stages = usePatientsState((state) => state.stages);
  if (plan === undefined || thresholds === undefined) return null;
  const proposals = itemProposals(plan, sessions, thresholds, stages);
  if (proposals.length === 0) return null;
  return (
    <section className="card programme" aria-labelledby="programme-title">
      <h2 id="programme-title">What to do next</h2>
      <p className="small soft">
        The rules propose, from the sessions at the present stage; you decide. They judge no knee.
      </p>
      {proposals.map((proposed) => (
        <Proposed key={proposed.index} plan={plan} proposed={proposed} />
      ))}
      <Thresholds plan={plan} />
    </section>
  );
}

function Proposed({ plan, proposed }: { plan: PlanDocument; proposed: ItemProposal }) {
  const { index, item, proposal, sessions } = proposed;
  const decisions = usePatientsState((state) => state.patient?.decisions) ?? [];
  const theirs = decisions.filter((one) => one.planId === plan.id && one.item === index);
  return (
    <article className="programme-item">
      <h3>{itemName(item)}</h3>
      <p>
        <strong>{proposalWords[proposal.proposal]}</strong>
        {' · '}
        {sessions === 0 ? 'No session at this stage yet.' : `Sessions at this stage: ${sessions}.`}{' '}
        {nextWords(proposed)}
      </p>
      <ul className="small">
        {reasonSentences(proposed).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      <Decide plan={plan} proposed={proposed} />
      {theirs.length > 0 && (
        <ol className="small programme-decisions" aria-label="Decisions">
          {theirs.map((decision) => (
            <li key={decision.id}>{decisionSentence(decision)}</li>
          ))}
        </ol>
      )}
    </article>
  );
}

interface DecideProps {
  plan: PlanDocument;
  proposed: ItemProposal;
}

/** Accepts or refuses, with initials. Accepting a change opens the next plan as a draft. */
function Decide({ plan, proposed }: DecideProps) {
  const patients = usePatients();
  const fields = useId();
  const { by, setBy, remember } = useInitials();
  const [why, setWhy] = useState('');
  const [lacks, setLacks] = useState<string | null>(null);
  const opensPlan = changesPlan(proposed);
  const decide = async (answer: Decision['answer']) => {
    const isRefused = answer === 'refused';
    if (by.trim() === '') return setLacks('Sign with your initials first.');
    if (isRefused && why.trim() === '') return setLacks('Say in a line why not.');
    setLacks(null);
    remember(by);
    await patients.record(
      (patient, entry) => ({
        ...patient,
        decisions: [
          ...patient.decisions,
          decisionOn(plan, proposed, { ...entry, by: by.trim(), answer, why: isRefused ? why.trim() : '' }),
        ],
      }),
      ({ id }) => ({ what: 'decision', about: id, by: by.trim() }),
    );
    setWhy('');
    if (!isRefused && opensPlan) await patients.writePlan(draftOf(plan, proposed));
  };
  return (
    <div className="programme-decide">
      <label htmlFor={`${fields}-by`}>Your initials</label>
      <input
        id={`${fields}-by`}
        className="text-input programme-initials"
        value={by}
        maxLength={longestPatientText.by}
        onChange={(event) => setBy(event.target.value)}
      />
      <label htmlFor={`${fields}-why`}>Why not, in a line</label>
      <input
        id={`${fields}-why`}
        className="text-input"
        value={why}
        maxLength={longestPatientText.why}
        onChange={(event) => setWhy(event.target.value)}
      />
      <div className="button-row">
        <Button className="button" onPress={() => void decide('accepted')}>
          {opensPlan ? 'Accept and write the plan' : 'Accept'}
        </Button>
        <Button className="button" onPress={() => void decide('refused')}>
          Decide otherwise
        </Button>
      </div>
      {lacks !== null && <p role="alert">{lacks}</p>}
    </div>
  );
}
