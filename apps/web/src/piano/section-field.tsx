import { useDesk } from '../desk/use-desk.ts';
import { useLanguage } from '../parts/language.tsx';
import { SelectField } from '../parts/select-field.tsx';

interface Props {
  /** '' is the whole piano. */
  readonly value: string;
  readonly onChange: (section: string) => void;
}

/** One section of this piano, or the whole of it. */
export function SectionField({ value, onChange }: Props) {
  const { say } = useLanguage();
  const { job } = useDesk();
  return (
    <SelectField
      label={say('Section')}
      value={value}
      onChange={onChange}
      options={[
        { value: '', words: say('the whole piano') },
        ...job.sections.map(({ section }) => ({ value: section, words: section })),
      ]}
    />
  );
}
