import { hashOf } from '../desk/route.ts';
import { useLanguage } from '../parts/language.tsx';
import { useObservable } from '../parts/observable.ts';
import { ExchangeSign } from './exchange-sign.tsx';
import { startNewerVersion, versions } from './versions.ts';

export function Header() {
  const language = useLanguage();
  const { say } = language;
  const { isNewerReady } = useObservable(versions);
  return (
    <header className="header">
      <a className="wordmark" href={hashOf({ place: 'jobs' })} aria-label={say('Becket: all jobs')}>
        <svg viewBox="0 0 32 32" width="32" height="32" aria-hidden="true">
          <circle cx="14" cy="14" r="6" />
          <path d="M14 14 C 18 14, 19 11, 20.5 8.5 M14 24 A 10 10 0 1 1 24 14 L 24 29" />
        </svg>
        <span className="wide-only">Becket</span>
      </a>
      <div className="header-end">
        {isNewerReady && (
          <button type="button" className="button quiet" onClick={startNewerVersion}>
            {say('Start the newer version')}
          </button>
        )}
        <ExchangeSign />
        <a className="button quiet" href={hashOf({ place: 'settings' })}>
          {say('Settings')}
        </a>
      </div>
    </header>
  );
}
