import { PasswordInput, type PasswordInputProps } from '@mantine/core';
import { useTexts } from '../texts/texts.js';

/** A password, or another secret that is no browser's to keep (`off`): pasted or filled in by a password manager as well as typed, and shown when asked for. */
export function PasswordField({
  purpose,
  ...others
}: PasswordInputProps & { purpose: 'current-password' | 'new-password' | 'off' }) {
  const texts = useTexts();
  return (
    <PasswordInput
      required
      autoComplete={purpose}
      autoCapitalize="none"
      spellCheck={false}
      maxLength={200}
      visibilityToggleFocusable
      visibilityToggleButtonProps={{ 'aria-label': texts.password.show }}
      {...others}
    />
  );
}
