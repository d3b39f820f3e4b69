import './opening.css';

/** While a screen's code is fetched: nothing at first, and a word if it takes longer. */
export function OpeningScreen() {
  return (
    <main className="opening" aria-busy="true">
      <p className="opening-word soft" role="status">
        Opening …
      </p>
    </main>
  );
}
