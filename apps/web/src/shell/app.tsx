import type { Language } from '@becket/core';
import { useEffect } from 'react';
import { I18nProvider } from 'react-aria-components';
import type { Device } from '../desk/device.ts';
import { hashOf, type Route, tasks } from '../desk/route.ts';
import { DeviceContext } from '../desk/use-device.ts';
import { useRoute } from '../desk/use-route.ts';
import { LanguageContext, useLanguage } from '../parts/language.tsx';
import { useObservable } from '../parts/observable.ts';
import { Header } from './header.tsx';
import { JobFrame } from './job-frame.tsx';
import { JobsPage } from './jobs-page.tsx';
import { SettingsPage } from './settings-page.tsx';

/** The whole program: a header that is always there, and the place that the address names. */
export function App({ device }: { device: Device }) {
  const route = useRoute();
  const language = useObservable(device.language);
  useEffect(() => {
    document.title = titleOf(route, language);
  }, [route, language]);
  return (
    <LanguageContext value={language}>
      {/* What the widgets say by themselves, such as the way out of a sheet for whoever hears it. */}
      <I18nProvider locale={language.locale}>
        <DeviceContext value={device}>
          <button type="button" className="skip" onClick={toPlace}>
            {language.say('To the page itself')}
          </button>
          <Header />
          <Place route={route} />
        </DeviceContext>
      </I18nProvider>
    </LanguageContext>
  );
}

function Place({ route }: { route: Route }) {
  const language = useLanguage();
  const { say, sayNodes } = language;
  switch (route.place) {
    case 'jobs':
      return <JobsPage />;
    case 'settings':
      return <SettingsPage />;
    case 'job':
      return <JobFrame key={route.job} job={route.job} task={route.task} part={route.part} />;
    case 'nowhere':
      return (
        <main className="page" id="place" tabIndex={-1}>
          <h1>{say('There is nothing at this address')}</h1>
          <p>
            {sayNodes('Nothing was lost. {link}', {
              link: <a href={hashOf({ place: 'jobs' })}>{say('Go to the jobs.')}</a>,
            })}
          </p>
        </main>
      );
  }
}

function titleOf(route: Route, { say }: Language): string {
  if (route.place === 'job') return `${say(tasks[route.task])} · Becket`;
  return route.place === 'settings' ? `${say('Settings')} · Becket` : `${say('Jobs')} · Becket`;
}

function toPlace(): void {
  document.getElementById('place')?.focus();
}
