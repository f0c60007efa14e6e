import { NativeSelect } from '@mantine/core';

/** One of a few words, chosen from a list. */
export function Choice<Value extends string>({
  label,
  description,
  value,
  choices,
  none,
  error,
  required,
  disabled,
  onChange,
}: {
  label: string;
  description?: string;
  /** Empty: nothing is chosen. */
  value: Value | '';
  choices: readonly { value: Value; label: string }[];
  /** What it is called when nothing is chosen; left out: something has to be. */
  none?: string;
  error?: string | undefined;
  required?: boolean;
  disabled?: boolean;
  onChange: (value: Value | '') => void;
}) {
  return (
    <NativeSelect
      label={label}
      {...(description !== undefined && { description })}
      {...(required !== undefined && { required })}
      {...(disabled !== undefined && { disabled })}
      error={error}
      value={value}
      data={[...(none === undefined ? [] : [{ value: '', label: none }]), ...choices]}
      onChange={(event) => onChange(event.currentTarget.value as Value | '')}
    />
  );
}
