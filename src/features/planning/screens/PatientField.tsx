import { useEffect } from 'react';
import { Button, Input, Label, Text, TextField } from 'react-aria-components';
import { inventPseudonym } from '#documents/patient/inventPseudonym';
import { planBounds } from '#documents/plan/planRanges';
import { plainName } from '#documents/schema/plainName';
import { KnownPseudonyms } from '#ui/components/KnownPseudonyms';
import { NearPseudonym } from '#ui/components/NearPseudonym';
import { dayWords } from '#words/dateWords';
import { usePlanWriting, usePlanWritingState } from '../planWritingContext';

/** Whom the plan is for: a known pseudonym, a new one or one that is made up; and a way to continue from their last plan. */
export function PatientField() {
  const writing = usePlanWriting();
  const patient = usePlanWritingState(({ draft }) => draft.patient);
  const patients = usePlanWritingState((state) => state.patients);
  const near = usePlanWritingState((state) => state.near);
  const theirLast = usePlanWritingState((state) => state.theirLast);
  useEffect(() => void writing.enter(), [writing]);
  const known = patients.map(({ pseudonym }) => pseudonym);
  const name = plainName(patient);
  const isKnown = known.includes(name);
  const write = (next: string) => writing.change({ patient: next }, 'patient');
  return (
    <>
      <TextField
        className="field"
        value={patient}
        maxLength={planBounds.patient}
        onChange={write}
        autoComplete="off"
        autoFocus={patient === ''}
      >
        <Label className="field-label">Patient’s pseudonym</Label>
        <Input className="text-input" />
        <Text slot="description" className="small soft">
          Never a name: it appears in the file, the link and the sessions sent back.{' '}
          {name !== '' && (isKnown ? 'Known on this device.' : 'New on this device.')}
        </Text>
      </TextField>
      {near === null && <KnownPseudonyms typed={patient} known={known} onChoose={write} />}
      {near !== null && (
        <NearPseudonym
          near={near}
          name={name}
          onSame={() => write(near)}
          onOther={() => writing.denyNear()}
        />
      )}
      {name === '' && (
        <div className="button-row">
          <Button className="button button-quiet" onPress={() => write(inventPseudonym(known, Math.random))}>
            Make one up
          </Button>
        </div>
      )}
      {theirLast !== null && (
        <div className="button-row">
          <Button className="button" onPress={() => writing.copyTheirs()}>
            Continue from their plan of {dayWords(theirLast.createdAt)}
          </Button>
        </div>
      )}
    </>
  );
}
