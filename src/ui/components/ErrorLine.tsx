/** What went wrong with what was typed or asked for, announced at once; nothing where nothing did. */
export function ErrorLine({ sentence, isSmall = false }: { sentence: string | null; isSmall?: boolean }) {
  if (sentence === null) return null;
  return (
    <p className={isSmall ? 'small field-error' : 'field-error'} role="alert">
      {sentence}
    </p>
  );
}
