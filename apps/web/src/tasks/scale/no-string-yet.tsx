import { hashOf } from '../../desk/route.ts';
import { useDesk } from '../../desk/use-desk.ts';
import { useLanguage } from '../../parts/language.tsx';

/** Stands in a part of Scale while readings are lacking for every string, and says where they are entered. */
export function NoStringYet({ title }: { title: string }) {
  const { say, sayNodes } = useLanguage();
  const { desk } = useDesk();
  return (
    <>
      <h2>{title}</h2>
      <p>
        {sayNodes('No string can be computed yet. {link}', {
          link: (
            <a href={hashOf({ place: 'job', job: desk.id, task: 'record' })}>
              {say('Enter readings in Record.')}
            </a>
          ),
        })}
      </p>
    </>
  );
}
