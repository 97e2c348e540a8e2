import { type PhotoMark, type PhotoStage, photoScale } from '@becket/journal';
import { changePhoto, type PhotoChange, undoPhotoChange, withdrawPhoto } from '@becket/tasks';
import { useState } from 'react';
import { hashOf } from '../desk/route.ts';
import { useDesk } from '../desk/use-desk.ts';
import { useSettings } from '../desk/use-device.ts';
import { go } from '../desk/use-route.ts';
import { Choice } from '../parts/choice.tsx';
import { FormSheet } from '../parts/form-sheet.tsx';
import { useLanguage } from '../parts/language.tsx';
import { once } from '../parts/once.ts';
import { TextField } from '../parts/text-field.tsx';
import { AmendReason } from '../piano/amend-reason.tsx';
import { type MarkKind, markKinds, markWords } from './drawing.ts';
import { MarkSheet } from './mark-sheet.tsx';
import { MarkedPicture } from './marked-picture.tsx';
import { isOfRecord, type Photo, whereWords } from './photo-place.ts';
import { StageChoice } from './photo-stage.tsx';
import { PlaceChoice, readPlace, typedPlaceOf } from './place-choice.tsx';
import { usePhoto } from './use-photo.ts';

/** One photo: its marks drawn on it and listed beside it, its place and its words. Every change is kept at once. */
export function PhotoView({ photo }: { photo: Photo }) {
  const language = useLanguage();
  const { fixed, say } = language;
  const { desk, job, entries } = useDesk();
  const { unit } = useSettings();
  const picture = usePhoto(photo.digest);
  const [kind, setKind] = useState<MarkKind>('arrow');
  const [asked, setAsked] = useState<PhotoMark>();
  const [reason, setReason] = useState('');
  const [sheet, setSheet] = useState<'place' | 'out'>();
  const scale = photoScale(photo);
  const { digest, marks } = photo;
  const isSealed = job.seal !== undefined;
  const needsReason = isSealed && isOfRecord(photo);
  const isLocked = needsReason && reason.trim() === '';
  const changes = entries.filter(
    ({ id, fact }) =>
      fact.kind === 'photo' && 'digest' in fact && fact.digest === digest && !job.withdrawnEntries.has(id),
  ).length;

  const change = (next: (now: Photo) => Omit<PhotoChange, 'digest' | 'reason'>) =>
    desk.run((context, id) => {
      // A second stroke may come before the first is drawn: it is put beside it, not in its place.
      const now = desk.now()?.job.photos.find((one) => one.digest === digest) ?? photo;
      return changePhoto(context, id, { digest, ...next(now), reason: reason.trim() || undefined });
    });
  const add = (mark: PhotoMark) => change((now) => ({ marks: [...now.marks, mark] }));
  const draw = (mark: PhotoMark) => {
    if (mark.mark === 'arrow') void add(mark);
    else setAsked(mark);
  };
  const toPhotos = { place: 'job', job: desk.id, task: 'record', part: 'photos' } as const;

  return (
    <section aria-labelledby="photo" className="photo-view">
      <p>
        <a className="button quiet" href={hashOf(toPhotos)}>
          {say('All photos')}
        </a>
      </p>
      <h2 id="photo">
        {photo.shows ?? say('Photo')} <span className="faint">{whereWords(photo, language)}</span>
      </h2>
      {needsReason && (
        <AmendReason hint={say('needed before anything can be drawn')} reason={reason} onChange={setReason} />
      )}
      {picture.is === 'here' ? (
        <>
          <div className="photo-tools">
            <Choice
              label={say('Draw')}
              options={markKinds.map((value) => ({ value, words: say(value) }))}
              value={kind}
              onChange={setKind}
            />
            <button
              type="button"
              className="button"
              disabled={changes < 2}
              onClick={once(() =>
                desk.run((context, id) =>
                  undoPhotoChange(context, id, { digest, reason: reason.trim() || say('undo') }),
                ),
              )}
            >
              {say('Undo')}
            </button>
          </div>
          <MarkedPicture
            photo={photo}
            address={picture.address}
            scale={scale}
            unit={unit}
            kind={isLocked ? undefined : kind}
            onDraw={draw}
          />
        </>
      ) : (
        <p className="notice" role={picture.is === 'trouble' ? 'alert' : undefined}>
          {picture.is === 'reading'
            ? say('Reading the photo …')
            : picture.is === 'trouble'
              ? `▲ ${picture.sentence}`
              : say(
                  'This photo is not on this device yet. It comes from the server, once the device that took it has sent it.',
                )}
        </p>
      )}
      {marks.length > 0 && (
        <ol className="mark-list" aria-label={say('Marks')}>
          {marks.map((mark, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a mark has no name but its place in the list
            <li key={index}>
              <div className="mark-row">
                <span>{markWords(mark, index, { scale, unit }, language)}</span>
                <button
                  type="button"
                  className="button quiet"
                  aria-label={say('Take away mark {number}', { number: index + 1 })}
                  disabled={isLocked}
                  onClick={once(() =>
                    change((now) => ({ marks: now.marks.filter((one) => !isSameMark(one, mark)) })),
                  )}
                >
                  {say('Take away')}
                </button>
              </div>
            </li>
          ))}
        </ol>
      )}
      {scale !== undefined && (
        <p className="faint">
          {say(
            '± is the standard uncertainty of pointing alone. A length holds for what lies in one plane with the scale bar and faces the camera; what lies nearer or slants is off by more. It is never a reading: measure what is to be ordered.',
          )}
        </p>
      )}
      {scale?.disagreement !== undefined && scale.disagreement > 0.03 && (
        <p className="notice">
          {say(
            '▲ The scale bars on this photo differ by {figure} %: they do not lie in one plane that faces the camera, or one length is wrong.',
            { figure: fixed(100 * scale.disagreement, 0) },
          )}
        </p>
      )}
      <div className="button-row">
        <button type="button" className="button" disabled={isLocked} onClick={() => setSheet('place')}>
          {say('Change place or words')}
        </button>
        <button type="button" className="button quiet" onClick={() => setSheet('out')}>
          {say('Take the photo out')}
        </button>
      </div>
      <p className="faint">
        {say('{width} × {height} pixels, {figure} MB; taken in by {by}.', {
          width: photo.width,
          height: photo.height,
          figure: fixed(photo.bytes / 1e6, 2),
          by: photo.by,
        })}
      </p>
      {asked !== undefined && (
        <MarkSheet
          mark={asked}
          unit={unit}
          onClose={() => setAsked(undefined)}
          onKeep={async (mark) => {
            setAsked(undefined);
            await add(mark);
          }}
        />
      )}
      {sheet === 'place' && (
        <PlaceSheet
          photo={photo}
          isSealed={isSealed}
          reason={reason}
          onReason={setReason}
          onClose={() => setSheet(undefined)}
          onKeep={(next) => change(() => next)}
        />
      )}
      {sheet === 'out' && (
        <OutSheet
          onClose={() => setSheet(undefined)}
          onOut={async (why) => {
            setSheet(undefined);
            const done = await desk.run((context, id) => withdrawPhoto(context, id, { digest, reason: why }));
            if (done !== undefined) go(toPhotos);
          }}
        />
      )}
    </section>
  );
}

function PlaceSheet({
  photo,
  isSealed,
  reason,
  onReason,
  onClose,
  onKeep,
}: {
  photo: Photo;
  isSealed: boolean;
  reason: string;
  onReason: (reason: string) => void;
  onClose: () => void;
  onKeep: (next: Pick<PhotoChange, 'place' | 'shows' | 'stage'>) => Promise<unknown>;
}) {
  const language = useLanguage();
  const { say } = language;
  const { job } = useDesk();
  const [typed, setTyped] = useState(() => typedPlaceOf(photo.place));
  const [shows, setShows] = useState(photo.shows ?? '');
  const [stage, setStage] = useState<PhotoStage>(photo.stage ?? 'as found');
  const place = readPlace(typed, language);
  const needsReason = isSealed && (isOfRecord(photo) || stage === 'as found');
  const canKeep = typeof place !== 'string' && (!needsReason || reason.trim() !== '');
  return (
    <FormSheet
      title={say('Place and words')}
      keep={say('Keep')}
      canKeep={canKeep}
      onClose={onClose}
      onKeep={async () => {
        if (typeof place === 'string') return;
        onClose();
        await onKeep({ place, shows: shows.trim(), stage });
      }}
    >
      {isSealed && <StageChoice stage={stage} onChange={setStage} />}
      <PlaceChoice job={job} typed={typed} onChange={setTyped} />
      <TextField
        label={say('What it shows')}
        hint={say('may stay empty')}
        maxLength={300}
        value={shows}
        onChange={setShows}
      />
      {needsReason && <AmendReason reason={reason} onChange={onReason} />}
    </FormSheet>
  );
}

function OutSheet({ onClose, onOut }: { onClose: () => void; onOut: (reason: string) => Promise<void> }) {
  const { say } = useLanguage();
  const [reason, setReason] = useState('');
  return (
    <FormSheet
      title={say('Take the photo out of the record')}
      keep={say('Take it out')}
      canKeep={reason.trim() !== ''}
      onClose={onClose}
      onKeep={() => onOut(reason.trim())}
    >
      <p>{say('Its entries stay in the journal, and the picture in the saved job file.')}</p>
      <TextField label={say('Reason')} value={reason} onChange={setReason} />
    </FormSheet>
  );
}

/** A mark has no name: it is what is drawn. */
const isSameMark = (one: PhotoMark, other: PhotoMark): boolean =>
  JSON.stringify(one) === JSON.stringify(other);
