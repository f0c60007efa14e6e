import { TextInput } from '@mantine/core';
import { useState } from 'react';
import { useTexts } from '../texts/texts.js';
import { changeDeviceSettings, deviceSettings } from './device-settings.js';
import { isUsableSubstitute } from './typed-symbol.js';

/** What the hand-held scanner of this device types in place of the separator, when it is set to something visible. */
export function SeparatorField() {
  const texts = useTexts();
  const [typed, setTyped] = useState(deviceSettings().separatorSubstitute);
  const isUsable = typed === '' || isUsableSubstitute(typed);
  const change = (separatorSubstitute: string) => {
    setTyped(separatorSubstitute);
    if (separatorSubstitute === '' || isUsableSubstitute(separatorSubstitute)) {
      changeDeviceSettings({ separatorSubstitute });
    }
  };
  return (
    <TextInput
      label={texts.scanner.substitute}
      description={texts.scanner.substituteHint}
      autoComplete="off"
      spellCheck={false}
      maxLength={6}
      value={typed}
      error={isUsable ? undefined : texts.scanner.substituteUnusable}
      onChange={(event) => change(event.currentTarget.value)}
    />
  );
}
