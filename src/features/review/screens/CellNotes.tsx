/** Small words below those of a cell. */
export function CellNotes({ notes }: { notes: readonly string[] }) {
  return notes.map((note) => (
    <span key={note} className="table-lacking">
      {note}
    </span>
  ));
}
