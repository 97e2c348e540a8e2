import type { PhotoStage, Place } from '@becket/journal';
import { recordPhoto } from '@becket/tasks';
import { useState } from 'react';
import { sentenceOf } from '../desk/sentence-of.ts';
import { useDesk } from '../desk/use-desk.ts';
import { useLanguage } from '../parts/language.tsx';
import { encodeAway } from '../worker/photo-away.ts';
import { PictureButton } from './picture-button.tsx';
import './photos.css';
import { Problem } from '../parts/problem.tsx';

interface Props {
  readonly place: () => Place;
  readonly shows: string;
  readonly reason?: string | undefined;
  /** What it is a picture of: the piano as found when not said. */
  readonly stage?: PhotoStage | undefined;
  /** Called for each photo once it is kept on this device. */
  readonly onKept: (digest: string) => void;
}

/** One photo of what is being noted, tied to its place: taken without leaving the form. */
export function TakePhoto({ place, shows, reason, stage, onKept }: Props) {
  const language = useLanguage();
  const { say } = language;
  const { desk } = useDesk();
  const [said, setSaid] = useState('');
  const [problem, setProblem] = useState<string>();

  async function add(files: readonly File[]): Promise<void> {
    setProblem(undefined);
    for (const file of files) {
      setSaid(say('Making the photo ready …'));
      try {
        const encoded = await encodeAway(file, language);
        const at = place();
        const done = await desk.run((context, id) =>
          recordPhoto(context, id, {
            ...encoded,
            place: at,
            shows: shows.trim() || undefined,
            reason: reason?.trim() || undefined,
            stage,
          }),
        );
        setSaid(done === undefined ? '' : say('The photo is kept on this device.'));
        if (done !== undefined) onKept(done.digest);
      } catch (error) {
        setSaid('');
        setProblem(sentenceOf(error, language));
      }
    }
  }

  return (
    <>
      <div className="button-row">
        <PictureButton words={say('Take a photo')} isCamera onFiles={add} />
        <PictureButton words={say('Choose photos')} onFiles={add} />
        <span role="status" className="faint">
          {said}
        </span>
      </div>
      <Problem says={problem} />
    </>
  );
}
