import { hashOf } from '../desk/route.ts';
import { type Photo, photoPart, whereWords } from './photo-place.ts';
import { usePhoto } from './use-photo.ts';
import './photos.css';

/** A small picture that leads to the photo, its marks and its place. */
export function PhotoThumb({ job, photo, isBare = false }: { job: string; photo: Photo; isBare?: boolean }) {
  const picture = usePhoto(photo.digest);
  const { marks, shows } = photo;
  const marked = marks.length === 0 ? '' : `, ${marks.length} ${marks.length === 1 ? 'mark' : 'marks'}`;
  const words = `${shows ?? 'Photo'}, ${whereWords(photo)}`;
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
            ? 'Reading …'
            : picture.is === 'trouble'
              ? '▲ damaged'
              : 'not on this device yet'}
        </span>
      )}
      {!isBare && (
        <span className="photo-words">
          <strong>{shows ?? 'Photo'}</strong>
          <span className="faint">
            {whereWords(photo)}
            {marked}
          </span>
        </span>
      )}
    </a>
  );
}
