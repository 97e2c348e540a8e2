/** The page when the program cannot start on this device. */
export function Trouble({ sentence }: { sentence: string }) {
  return (
    <main className="page">
      <h1>Becket cannot start here</h1>
      <p role="alert">{sentence}</p>
      <button type="button" className="button" onClick={() => location.reload()}>
        Load again
      </button>
    </main>
  );
}
