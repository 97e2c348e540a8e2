/** What went wrong at the last try, in one sentence that is read out at once; nothing while nothing did. */
export function Problem({ says }: { says: string | undefined }) {
  if (says === undefined) return null;
  return (
    <p role="alert" className="notice bad">
      ▲ {says}
    </p>
  );
}
