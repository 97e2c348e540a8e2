import type { PhotoStage, Place } from '@becket/journal';
import { recordPhoto } from '@becket/tasks';
import { type DragEvent, useEffect, useRef, useState } from 'react';
import { sentenceOf } from '../desk/sentence-of.ts';
import { useDesk, useSelectedKey } from '../desk/use-desk.ts';
import { useLanguage } from '../parts/language.tsx';
import { Problem } from '../parts/problem.tsx';
import { queue } from '../parts/queue.ts';
import { TextField } from '../parts/text-field.tsx';
import { AmendReason } from '../piano/amend-reason.tsx';
import { encodeAway } from '../worker/photo-away.ts';
import { StageChoice } from './photo-stage.tsx';
import { PhotoThumb } from './photo-thumb.tsx';
import { PhotoView } from './photo-view.tsx';
import { PictureButton } from './picture-button.tsx';
import { PlaceChoice, readPlace, typedPlaceOf } from './place-choice.tsx';

/** The photos of a job: taken or dropped in, each tied to a place; and one of them with its marks. */
export function PhotosPlace({ shown }: { shown: string | undefined }) {
  const { say } = useLanguage();
  const { desk, job } = useDesk();
  const photo = shown === undefined ? undefined : job.photos.find(({ digest }) => digest === shown);
  if (photo !== undefined) return <PhotoView key={photo.digest} photo={photo} />;
  return (
    <section aria-labelledby="photos">
      <h2 id="photos">{say('Photos')}</h2>
      {shown !== undefined && <p className="notice">{say('This photo is not in the record any more.')}</p>}
      <AddPhotos />
      {job.photos.length === 0 ? (
        <p>{say('No photo yet. What the strip takes away is best seen on one.')}</p>
      ) : (
        <ul className="photo-list" aria-label={say('Photos of this job')}>
          {job.photos.map((one) => (
            <li key={one.digest}>
              <PhotoThumb job={desk.id} photo={one} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

function AddPhotos() {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const [selected] = useSelectedKey();
  const [typed, setTyped] = useState(() => typedPlaceOf(selected === undefined ? {} : { key: selected }));
  const [shows, setShows] = useState('');
  const [reason, setReason] = useState('');
  const [askedStage, setStage] = useState<PhotoStage>();
  // Before the seal there is nothing but the piano as found.
  const stage = job.seal === undefined ? 'as found' : askedStage;
  const needsReason = job.seal !== undefined && stage === 'as found';
  const [progress, setProgress] = useState<string>();
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [isOver, setOver] = useState(false);
  const inTurn = useRef(queue());

  async function add(files: readonly File[]): Promise<void> {
    if (files.length === 0) return;
    const place = readPlace(typed, language);
    if (typeof place === 'string') {
      setProblems([place]);
      return;
    }
    if (stage === undefined) {
      setProblems([
        say(
          'Cannot add a photo after the seal before it is said what it shows: choose it above, then add the photo again.',
        ),
      ]);
      return;
    }
    if (needsReason && reason.trim() === '') {
      setProblems([
        say('Cannot add to the sealed record without a reason: give it above, then add the photo again.'),
      ]);
      return;
    }
    setProblems([]);
    // One that is taken while another is being made ready waits for it.
    await inTurn.current(() => make(files, place));
  }

  async function make(files: readonly File[], place: Place): Promise<void> {
    const found: string[] = [];
    let added = 0;
    for (const [index, file] of files.entries()) {
      setProgress(
        say('Making photo {number} of {count} ready …', { number: index + 1, count: files.length }),
      );
      try {
        const encoded = await encodeAway(file, language);
        const done = await desk.run((context, id) =>
          recordPhoto(context, id, {
            ...encoded,
            place,
            shows: shows.trim() || undefined,
            stage,
            reason: needsReason ? reason.trim() : undefined,
          }),
        );
        // What went wrong stands at the top of the page; what was kept before it stays.
        if (done === undefined) break;
        added += 1;
      } catch (error) {
        found.push(sentenceOf(error, language));
      }
    }
    setProblems((now) => [...now, ...found]);
    setProgress(
      added === 0
        ? undefined
        : say('{count, plural, one {# photo is} other {# photos are}} kept on this device.', {
            count: added,
          }),
    );
    // Unless the next one is being described already.
    if (added > 0) setShows((now) => (now === shows ? '' : now));
  }

  const latestAdd = useRef(add);
  latestAdd.current = add;
  useEffect(() => {
    const paste = (event: ClipboardEvent) => {
      const files = picturesIn(event.clipboardData);
      if (files.length === 0) return;
      event.preventDefault();
      void latestAdd.current(files);
    };
    addEventListener('paste', paste);
    return () => removeEventListener('paste', paste);
  }, []);

  const drop = {
    onDragOver: (event: DragEvent) => {
      event.preventDefault();
      setOver(true);
    },
    onDragLeave: () => setOver(false),
    onDrop: (event: DragEvent) => {
      event.preventDefault();
      setOver(false);
      void add(picturesIn(event.dataTransfer));
    },
  };

  return (
    <div className="photo-add" data-over={isOver} {...drop}>
      {job.seal !== undefined && <StageChoice stage={stage} onChange={setStage} />}
      <div className="fields">
        <PlaceChoice job={job} typed={typed} onChange={setTyped} />
        <TextField
          label={say('What it shows')}
          hint={say('may stay empty')}
          maxLength={300}
          value={shows}
          onChange={setShows}
        />
        {needsReason && <AmendReason reason={reason} onChange={setReason} />}
      </div>
      <div className="button-row">
        <PictureButton words={say('Take a photo')} isCamera onFiles={add} />
        <PictureButton words={say('Choose photos')} onFiles={add} />
        <span className="faint">{say('or drop them here, or paste one')}</span>
      </div>
      <p className="faint">
        {say('Each is made smaller on this device, and where and when it was taken is left out.')}
      </p>
      <p role="status">{progress}</p>
      {problems.map((sentence) => (
        <Problem key={sentence} says={sentence} />
      ))}
    </div>
  );
}

function picturesIn(data: DataTransfer | null): File[] {
  return [...(data?.files ?? [])].filter(({ type }) => type === '' || type.startsWith('image/'));
}
