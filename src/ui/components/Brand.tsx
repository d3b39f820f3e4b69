/** The app's mark and name, as every screen begins. */
export function Brand() {
  return (
    <span className="brand">
      <Mark /> <span className="brand-name">Overfoot</span>
    </span>
  );
}

/** A line over a foot, in its lane. */
function Mark() {
  return (
    <svg viewBox="0 0 32 32" aria-hidden="true">
      <rect x="8.5" y="2" width="11" height="22" rx="2" fill="var(--lane)" stroke="var(--lane-edge)" />
      <path d="M14 3v21" stroke="var(--ink)" strokeWidth="2.5" strokeLinecap="round" />
      <circle cx="14" cy="13" r="3.6" fill="var(--in-line)" stroke="var(--ink)" strokeWidth="1.2" />
      <path d="M9 29.5c-1.4 0-1.6-5.5 5-5.5 4.5 0 6.5 2.7 11.5 3.3 1.8.2 1.7 2.2.2 2.2z" fill="var(--ink)" />
    </svg>
  );
}
