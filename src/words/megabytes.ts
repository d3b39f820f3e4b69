import { locale } from './messages/message';

/** A size for display: '0.3 MB', '12 MB', '10.7 GB'; never 0. */
export function megabytes(bytes: number): string {
  const value = Math.max(0.1, bytes / 1_000_000);
  const written = (number: number, digits: number) =>
    new Intl.NumberFormat(locale(), {
      minimumFractionDigits: digits,
      maximumFractionDigits: digits,
      useGrouping: false,
    }).format(number);
  if (value >= 1000) return `${written(value / 1000, 1)} GB`;
  return `${written(value, value < 10 ? 1 : 0)} MB`;
}
