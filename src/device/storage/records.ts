/** The tables in which records are kept; the key is stored next to the value. */
export const tableNames = [
  ...(['visits', 'sessions', 'facts', 'plans', 'sets', 'tracking', 'rows'] as const),
  ...(['notes', 'lock', 'patients', 'digests', 'replica'] as const),
] as const;
export type TableName = (typeof tableNames)[number];

/**
 * Which writing of a record it is: another one after every change of its content. Empty where a version of the
 * program wrote it that did not note it.
 */
export type Edition = string;

/** A record as it was read. */
export interface KeptRecord {
  value: unknown;
  edition: Edition;
}

export type RecordChange =
  /** With `expects`, only where that edition is there, null meaning none; otherwise none of the changes is made. */
  | { put: TableName; key: string; value: unknown; expects?: Edition | null }
  /** Only replaces an existing record; where it is gone, none of the changes is made. */
  | { replace: TableName; key: string; value: unknown; expects?: Edition }
  /**
   * Removes a record, and with `andBelow` all whose keys start with it; with `expects` only where that edition is
   * there, otherwise none of the changes is made.
   */
  | { remove: TableName; key: string; andBelow?: boolean; expects?: Edition };

/** Tables of plain data by key. What comes back is untrusted: the reader checks it. */
export interface Records {
  get(table: TableName, key: string): Promise<unknown>;
  /** The same with its edition; null where there is none. */
  find(table: TableName, key: string): Promise<KeptRecord | null>;
  /** The keys of a table, in order. */
  keys(table: TableName): Promise<string[]>;
  /**
   * In the order of their keys; with a prefix, only those whose keys start with it. One that is known to be
   * damaged has the problem for a value.
   */
  list(table: TableName, prefix?: string): Promise<(KeptRecord & { key: string })[]>;
  /**
   * Makes all changes, or none.
   *
   * @returns  the edition that each change wrote; empty for one that removed
   * @throws StorageProblem  'missing' where a record to be replaced is gone, 'changed' where another edition
   *   is there than expected, 'full', ...
   */
  apply(changes: readonly RecordChange[]): Promise<readonly Edition[]>;
  close(): void;
}

export function tableOf(change: RecordChange): TableName {
  return 'put' in change ? change.put : 'replace' in change ? change.replace : change.remove;
}
