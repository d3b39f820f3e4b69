import { useReviewState } from '../reviewContext';

/** Whether what is set here is saved on this device. */
export function KeepingLine() {
  const keeping = useReviewState((state) => state.keeping);
  const keptFor = useReviewState((state) => state.keptFor);
  const words = {
    'not-kept': '',
    measured: '',
    unsaved: 'Not saved yet',
    kept: keptFor === null ? 'Saved on this device' : `Kept for ${keptFor}`,
    saving: 'Saving …',
    failed: 'Not saved',
  }[keeping.state];
  return (
    <span className="keeping small soft no-print" role="status">
      {words}
    </span>
  );
}
