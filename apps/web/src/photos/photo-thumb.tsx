import { hashOf } from '../desk/route.ts';
import { useLanguage } from '../parts/language.tsx';
import { type Photo, photoPart, whereWords } from './photo-place.ts';
import { usePhoto } from './use-photo.ts';
import './photos.css';

/** A small picture that leads to the photo, its marks and its place. */
export function PhotoThumb({ job, photo, isBare = false }: { job: string; photo: Photo; isBare?: boolean }) {
  const language = useLanguage();
  const { say } = language;
  const picture = usePhoto(photo.digest);
  const { marks, shows } = photo;
  const marked =
    marks.length === 0
      ? ''
      : `, ${say('{count, plural, one {# mark} other {# marks}}', { count: marks.length })}`;
  const words = `${shows ?? say('Photo')}, ${whereWords(photo, language)}`;
  return (
    <a
      className="photo-thumb"
      href={hashOf({ place: 'job', job, task: 'record', part: photoPart(photo.digest) })}
      aria-label={`${words}${marked}`}
    >
      {picture.is === 'here' ? (
        <img src={picture.address} alt="" width={photo.width} height={photo.height} />
      ) : (
        <span className="photo-absent">
          {picture.is === 'reading'
            ? say('Reading …')
            : picture.is === 'trouble'
              ? say('▲ damaged')
              : say('not on this device yet')}
        </span>
      )}
      {!isBare && (
        <span className="photo-words">
          <strong>{shows ?? say('Photo')}</strong>
          <span className="faint">
            {whereWords(photo, language)}
            {marked}
          </span>
        </span>
      )}
    </a>
  );
}
