/** Name of the sealed copies on this device. */
export const replicaName = 'overfoot-shared';
/** The browser's database in which they are. */
export const replicaDatabase = `_pouch_${replicaName}`;
