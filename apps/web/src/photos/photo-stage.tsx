import { type Message, message } from '@becket/core';
import { type PhotoStage, photoStages } from '@becket/journal';
import { Choice } from '../parts/choice.tsx';
import { useLanguage } from '../parts/language.tsx';

const stageWords: Record<PhotoStage, Message> = {
  'as found': message('the piano as found'),
  'after the strip': message('after the strip'),
  'as strung': message('the new work'),
};

/** Which state of the piano a photo shows; asked once the record is sealed. */
export function StageChoice({
  stage,
  onChange,
}: {
  stage: PhotoStage | undefined;
  onChange: (stage: PhotoStage) => void;
}) {
  const { say } = useLanguage();
  return (
    <Choice<PhotoStage | ''>
      label={say('What the photo shows')}
      value={stage ?? ''}
      onChange={(value) => {
        if (value !== '') onChange(value);
      }}
      options={photoStages.map((value) => ({ value, words: say(stageWords[value]) }))}
    />
  );
}
