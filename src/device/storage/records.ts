/** The tables in which records are kept; the key is stored next to the value. */
export const tableNames = [
  ...(['visits', 'sessions', 'facts', 'plans', 'sets', 'tracking', 'rows'] as const),
  ...(['notes', 'lock'] as const),
] as const;
export type TableName = (typeof tableNames)[number];

export type RecordChange =
  | { put: TableName; key: string; value: unknown }
  /** Only replaces an existing record; where it is gone, none of the changes is made. */
  | { replace: TableName; key: string; value: unknown }
  /** Removes a record, and with `andBelow` all whose keys start with it. */
  | { remove: TableName; key: string; andBelow?: boolean };

/** Tables of plain data by key. What comes back is untrusted: the reader checks it. */
export interface Records {
  get(table: TableName, key: string): Promise<unknown>;
  /** The keys of a table, in order. */
  keys(table: TableName): Promise<string[]>;
  /** In the order of their keys; with a prefix, only those whose keys start with it. */
  list(table: TableName, prefix?: string): Promise<{ key: string; value: unknown }[]>;
  /**
   * Makes all changes, or none.
   *
   * @throws StorageProblem  'missing' where a record to be replaced is gone, 'full', ...
   */
  apply(changes: readonly RecordChange[]): Promise<void>;
  close(): void;
}
