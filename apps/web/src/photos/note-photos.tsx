import { hashOf } from '../desk/route.ts';
import { useDesk } from '../desk/use-desk.ts';
import { useLanguage } from '../parts/language.tsx';
import { photosOfNote } from './photo-place.ts';
import { PhotoThumb } from './photo-thumb.tsx';

/** The photos of a note and its section, one tap from its string card. */
export function NotePhotos({ noteKey, section }: { noteKey: number; section: string | undefined }) {
  const language = useLanguage();
  const { say } = language;
  const { desk, job } = useDesk();
  const photos = photosOfNote(job.photos, { key: noteKey, section });
  return (
    <div className="note-photos">
      {photos.map((photo) => (
        <PhotoThumb key={photo.digest} job={desk.id} photo={photo} isBare />
      ))}
      <a
        className="button quiet"
        href={hashOf({ place: 'job', job: desk.id, task: 'record', part: 'photos' })}
      >
        {photos.length === 0 ? say('Add a photo') : say('All photos')}
      </a>
    </div>
  );
}
