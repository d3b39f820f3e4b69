/** Eight corners. */
export function StopSign() {
  return (
    <svg className="icon" viewBox="0 0 20 20" aria-hidden="true">
      <path d="M6 1h8l5 5v8l-5 5H6l-5-5V6z" />
    </svg>
  );
}
