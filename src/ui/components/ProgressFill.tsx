/** How far something has come, as a bar; the words and the role stand round it. */
export function ProgressFill({ percentage }: { percentage: number | undefined }) {
  return (
    <div className="progress-bar">
      <div className="progress-fill" style={{ width: `${percentage ?? 0}%` }} />
    </div>
  );
}
