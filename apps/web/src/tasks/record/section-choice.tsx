import { useDesk } from '../../desk/use-desk.ts';
import { Choice } from '../../parts/choice.tsx';
import { useLanguage } from '../../parts/language.tsx';
import { usePart } from '../../parts/observable.ts';
import { SelectField } from '../../parts/select-field.tsx';
import { recordViewOf } from './record-state.ts';

/** The section that the Record screens look at; the first while none was chosen. Undefined without sections. */
export function useSection(): string | undefined {
  const { desk, job } = useDesk();
  const section = usePart(recordViewOf(desk.id), (shown) => shown.section);
  const isKnown = job.sections.some((one) => one.section === section);
  return isKnown ? section : job.sections[0]?.section;
}

/** The sections side by side; choosing one holds for all Record screens. */
export function SectionChoice({ spoken }: { spoken?: (section: string) => string }) {
  const { say } = useLanguage();
  const { desk, job } = useDesk();
  const section = useSection();
  return (
    <Choice
      label={say('Section')}
      value={section ?? ''}
      onChange={(name) => recordViewOf(desk.id).update({ section: name })}
      options={job.sections.map((one) => ({
        value: one.section,
        words: one.section,
        ...(spoken === undefined ? {} : { spoken: spoken(one.section) }),
      }))}
    />
  );
}

/** A section for one form alone. */
export function SectionSelect({ value, onChange }: { value: string; onChange: (section: string) => void }) {
  const { say } = useLanguage();
  const { job } = useDesk();
  return (
    <SelectField
      label={say('Section')}
      value={value}
      onChange={onChange}
      options={job.sections.map(({ section }) => ({ value: section, words: section }))}
    />
  );
}
