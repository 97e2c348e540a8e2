import { type PhotoStage, photoStages } from '@becket/journal';
import { Choice } from '../parts/choice.tsx';

const stageWords: Record<PhotoStage, string> = {
  'as found': 'the piano as found',
  'after the strip': 'after the strip',
  'as strung': 'the new work',
};

/** Which state of the piano a photo shows; asked once the record is sealed. */
export function StageChoice({
  stage,
  onChange,
}: {
  stage: PhotoStage | undefined;
  onChange: (stage: PhotoStage) => void;
}) {
  return (
    <Choice<PhotoStage | ''>
      label="What the photo shows"
      value={stage ?? ''}
      onChange={(value) => {
        if (value !== '') onChange(value);
      }}
      options={photoStages.map((value) => ({ value, words: stageWords[value] }))}
    />
  );
}
