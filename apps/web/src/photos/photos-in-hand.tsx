import { useDesk, useSelectedKey } from '../desk/use-desk.ts';
import { photosOfNote } from './photo-place.ts';
import { PhotoThumb } from './photo-thumb.tsx';

/** So many stand in one row beside the way to the plan. */
const shownAtOnce = 3;

/** The photos of the note in hand, one tap away while its string card is not shown. */
export function PhotosInHand() {
  const { desk, job, record } = useDesk();
  const [key] = useSelectedKey();
  const note = record.notes.find((one) => one.key === key);
  if (note === undefined) return null;
  const photos = photosOfNote(job.photos, { key: note.key, section: note.section?.section });
  return photos
    .slice(0, shownAtOnce)
    .map((photo) => <PhotoThumb key={photo.digest} job={desk.id} photo={photo} isBare />);
}
