import { dayWords } from '#words/dateWords';
import { usePatientsState } from '../patientsContext';

/** Sessions, plans and reviews that a colleague had in another version: they stay beside the one that counts. */
export function OtherVersions() {
  const versions = usePatientsState((state) => state.otherVersions);
  if (versions.length === 0) return null;
  return (
    <section className="card other-versions" aria-labelledby="other-versions-title">
      <h2 id="other-versions-title">In another version</h2>
      <p className="small soft">
        These differed between two devices. The one that was signed last counts; where neither was signed,
        with a record that is handed over the one that was here, and between devices that share the one that
        ended later. It is what you see elsewhere.
      </p>
      <p className="small soft">
        Of a set that was reviewed on both, limits and remarks of both count. Corrections and cues are those
        of the later review, or of the version that was kept where a record was taken over.
      </p>
      {versions.map(({ name, by, at, differences }, index) => (
        <details key={index}>
          <summary>
            {name}, as {by} had it ({dayWords(at)})
          </summary>
          <ul className="small">
            {differences.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </details>
      ))}
    </section>
  );
}
