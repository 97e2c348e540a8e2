import { useDesk } from '../desk/use-desk.ts';
import { useLanguage } from '../parts/language.tsx';
import { photosOfPlace } from './photo-place.ts';
import { PhotoThumb } from './photo-thumb.tsx';
import { TakePhoto } from './take-photo.tsx';

/** The photos of a section, or of the whole piano, where it is described; a further one is taken there. */
export function PlacePhotos({
  section,
  reason,
}: {
  section: string | undefined;
  /** Why the record is changed, once it is sealed. */
  reason: string | undefined;
}) {
  const { say } = useLanguage();
  const { desk, job } = useDesk();
  const photos = photosOfPlace(job.photos, section);
  return (
    <section aria-labelledby="place-photos">
      <h3 id="place-photos">{say('Photos')}</h3>
      {photos.length > 0 && (
        <div className="note-photos">
          {photos.map((photo) => (
            <PhotoThumb key={photo.digest} job={desk.id} photo={photo} isBare />
          ))}
        </div>
      )}
      <TakePhoto
        place={() => (section === undefined ? {} : { section })}
        shows=""
        stage="as found"
        reason={reason}
        onKept={() => {}}
      />
    </section>
  );
}
