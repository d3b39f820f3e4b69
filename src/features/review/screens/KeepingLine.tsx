import { useReviewState } from '../reviewContext';

/** Whether what is set here is saved on this device. */
export function KeepingLine() {
  const keeping = useReviewState((state) => state.keeping);
  const words = {
    'not-kept': '',
    measured: '',
    unsaved: 'Not saved yet',
    kept: 'Saved on this device',
    saving: 'Saving …',
    failed: 'Not saved',
  }[keeping.state];
  return (
    <span className="keeping small soft no-print" role="status">
      {words}
    </span>
  );
}
