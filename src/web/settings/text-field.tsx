import { TextInput, type TextInputProps } from '@mantine/core';
import type { Edits } from '../frame/use-edits.js';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import { noteOf } from './note-of-field.js';

type Words<Draft> = { [Name in keyof Draft]: Draft[Name] extends string ? Name : never }[keyof Draft] &
  string;

/** One word, number or time of what is changed. */
export function TextField<Draft extends object>({
  edits,
  field,
  problem,
  ...others
}: {
  edits: Edits<Draft>;
  field: Words<Draft>;
  problem: ServiceProblem | undefined;
} & TextInputProps) {
  const texts = useTexts();
  return (
    <TextInput
      autoComplete="off"
      value={edits.draft[field] as string}
      error={noteOf(texts, edits, field, problem)}
      onChange={(event) => edits.set({ [field]: event.currentTarget.value } as unknown as Partial<Draft>)}
      {...others}
    />
  );
}

/** Whole days, from `min` to `max`. */
export function DaysField<Draft extends object>(props: Parameters<typeof TextField<Draft>>[0]) {
  return <TextField type="number" inputMode="numeric" step={1} required {...props} />;
}
