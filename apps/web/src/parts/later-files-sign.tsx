import { useLanguage } from './language.tsx';
import { laterFiles } from './later-files.ts';
import { useObservable } from './observable.ts';

/** Whether papers can be made and looked at where there is no network. */
export function LaterFilesSign() {
  const { say, fixed } = useLanguage();
  const { is, missing_bytes } = useObservable(laterFiles);
  switch (is) {
    case 'here':
      return <>● {say('Papers can be made and looked at without a network.')}</>;
    case 'coming':
      return (
        <>
          ▲{' '}
          {say('Papers need the network until {size} MB more are on this device; they come by themselves.', {
            size: fixed(missing_bytes / 1e6, 1),
          })}
        </>
      );
    case 'not known':
      return <>▲ {say('Papers need the network: the program is not kept on this device yet.')}</>;
  }
}
