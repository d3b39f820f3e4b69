declare module 'pouchdb-browser' {
  const PouchDB: import('./pouch').Pouch;
  export default PouchDB;
}
