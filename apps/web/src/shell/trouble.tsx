import { useLanguage } from '../parts/language.tsx';
/** The page when the program cannot start on this device. */
export function Trouble({ sentence }: { sentence: string }) {
  const { say } = useLanguage();
  return (
    <main className="page">
      <h1>{say('Becket cannot start here')}</h1>
      <p role="alert">{sentence}</p>
      <button type="button" className="button" onClick={() => location.reload()}>
        {say('Load again')}
      </button>
    </main>
  );
}
