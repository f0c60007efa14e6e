import { Stack } from '@mantine/core';
import type { FormEvent, ReactNode } from 'react';

/** A form: fields below each other, handed over without the page being left. */
export function Fields({
  onSubmit,
  label,
  children,
}: {
  onSubmit: () => void;
  /** Where no heading names the form. */
  label?: string;
  children: ReactNode;
}) {
  const submit = (event: FormEvent) => {
    event.preventDefault();
    // A form in a dialog stands, for React, in the form that opened it.
    event.stopPropagation();
    onSubmit();
  };
  return (
    <form onSubmit={submit} aria-label={label}>
      <Stack gap="lg" align="stretch">
        {children}
      </Stack>
    </form>
  );
}
