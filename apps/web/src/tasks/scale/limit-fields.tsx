import type { PlanRules } from '@becket/tasks';
import { useState } from 'react';
import { useLanguage } from '../../parts/language.tsx';
import { SelectField } from '../../parts/select-field.tsx';
import { TextField } from '../../parts/text-field.tsx';
import { typedLoad, typedPercent, typedRatio } from './plan-limits.ts';

/* The fields that the limits of a plan are typed in. What is typed stays as it was typed; it counts once it can be read. */

export type SetRules = (part: Partial<PlanRules>) => void;

interface LimitProps<Value> {
  readonly label: string;
  readonly value: Value;
  readonly onChange: (value: Value) => void;
}

/** How many notes in a row. */
export function RunField({ label, value, onChange }: LimitProps<number>) {
  const { say } = useLanguage();
  return (
    <SelectField
      label={label}
      value={String(value)}
      onChange={(notes) => onChange(Number(notes))}
      options={['1', '2', '3', '4', '5', '6'].map((notes) => ({
        value: notes,
        words: say('{count, plural, one {# note} other {# notes in a row}}', { count: Number(notes) }),
      }))}
    />
  );
}

export function RatioField({ value, ...field }: LimitProps<number>) {
  const { plain, say } = useLanguage();
  return (
    <TypedField
      {...field}
      start={plain(value)}
      read={typedRatio}
      need={say('A number from 1 is needed, such as 4.5.')}
    />
  );
}

export function PercentField({ value, ...field }: LimitProps<number>) {
  const { plain, say } = useLanguage();
  return (
    <TypedField
      {...field}
      start={plain(Math.round(value * 1000) / 10)}
      read={typedPercent}
      need={say('A number between 0 and 100 is needed.')}
    />
  );
}

/** A load in kilonewtons; left empty, none is asked. */
export function LoadField({
  value,
  found,
  onChange,
  label,
}: LimitProps<number | undefined> & {
  /** What was found [N]. */
  readonly found: number;
}) {
  const { fixed, plain, say } = useLanguage();
  return (
    <TypedField
      label={label}
      hint={say('As found {load} kN. Left empty, none is asked.', { load: fixed(found / 1000, 1) })}
      maxLength={8}
      start={value === undefined ? '' : plain(value / 1000)}
      read={typedLoad}
      need={say('A load above 0 kN is needed, or nothing.')}
      onChange={(load) => onChange(load === 'none' ? undefined : load)}
    />
  );
}

interface TypedProps<Value> {
  readonly label: string;
  readonly hint?: string;
  readonly maxLength?: number;
  /** The text that the field begins with. */
  readonly start: string;
  /** Undefined while the text is no such figure. */
  readonly read: (text: string) => Value | undefined;
  /** What the field says then. */
  readonly need: string;
  readonly onChange: (value: Value) => void;
}

function TypedField<Value>({ label, hint, maxLength = 6, start, read, need, onChange }: TypedProps<Value>) {
  const [text, setText] = useState(start);
  return (
    <TextField
      label={label}
      hint={hint}
      isNumber
      maxLength={maxLength}
      value={text}
      problem={read(text) === undefined ? need : undefined}
      onChange={(next) => {
        setText(next);
        const value = read(next);
        if (value !== undefined) onChange(value);
      }}
    />
  );
}
