import { Label, Radio, RadioGroup } from 'react-aria-components';

interface Props<T extends string> {
  readonly label: string;
  readonly options: readonly { readonly value: T; readonly words: string; readonly spoken?: string }[];
  readonly value: T;
  readonly onChange: (value: T) => void;
  readonly isLabelHidden?: boolean;
}

/** One of a few, all in sight. */
export function Choice<T extends string>({ label, options, value, onChange, isLabelHidden }: Props<T>) {
  return (
    <RadioGroup
      className="choice"
      orientation="horizontal"
      value={value}
      onChange={(next) => onChange(next as T)}
    >
      <Label className={isLabelHidden ? 'unseen' : 'choice-label'}>{label}</Label>
      <div className="choice-row">
        {options.map((option) => (
          <Radio key={option.value} value={option.value} className="choice-one" aria-label={option.spoken}>
            {option.words}
          </Radio>
        ))}
      </div>
    </RadioGroup>
  );
}
