/** A progress bar's fill; the parent gives the words and the role. */
export function ProgressFill({ percentage }: { percentage: number | undefined }) {
  return (
    <div className="progress-bar">
      <div className="progress-fill" style={{ width: `${percentage ?? 0}%` }} />
    </div>
  );
}
