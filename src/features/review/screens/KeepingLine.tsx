import { useAppState } from '../appContext';

/** Whether what is set here is saved on this device. */
export function KeepingLine() {
  const keeping = useAppState((state) => state.keeping);
  const words = {
    'not-kept': '',
    unsaved: 'Not kept yet: save the session',
    kept: 'Kept on this device',
    saving: 'Keeping …',
    failed: 'Not kept',
  }[keeping.state];
  return (
    <span className="keeping small soft no-print" role="status">
      {words}
    </span>
  );
}
