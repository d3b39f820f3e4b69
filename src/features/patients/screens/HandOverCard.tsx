import { Button } from 'react-aria-components';
import { usePatients, usePatientsState } from '../patientsContext';

/** What can be taken out of the patient's page: a report, and tables. */
export function HandOverCard({ isReportShown, onReport }: { isReportShown: boolean; onReport: () => void }) {
  const patients = usePatients();
  const making = usePatientsState((state) => state.making);
  const isBusy = making !== null;
  return (
    <section className="card hand-over" aria-labelledby="hand-over-title">
      <h2 id="hand-over-title">Hand over</h2>
      <div className="button-row">
        <Button className="button" onPress={onReport} aria-pressed={isReportShown}>
          Report
        </Button>
        <Button className="button" isDisabled={isBusy} onPress={() => void patients.saveTable('repetitions')}>
          Repetitions as CSV
        </Button>
        <Button className="button" isDisabled={isBusy} onPress={() => void patients.saveTable('visits')}>
          Sessions as CSV
        </Button>
      </div>
      <p className="small soft" role="status">
        {making?.what === 'table'
          ? `Measuring for the table: set ${making.done + 1} of ${Math.max(1, making.total)} …`
          : 'Tables carry the pseudonym and the day of each session.'}
      </p>
    </section>
  );
}
