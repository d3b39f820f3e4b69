/** A size for display: '0.3 MB', '12 MB', '10.7 GB'; never 0. */
export function megabytes(bytes: number): string {
  const value = Math.max(0.1, bytes / 1_000_000);
  if (value >= 1000) return `${(value / 1000).toFixed(1)} GB`;
  return `${value < 10 ? value.toFixed(1) : Math.round(value)} MB`;
}
