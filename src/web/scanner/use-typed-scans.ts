import { type RefObject, useEffect } from 'react';
import { readKey, separator } from './typed-keys.js';

/**
 * Lets a hand-held scanner type into a field whatever was pressed before: what is typed while no other field is being
 * filled in goes there, and separators, which browsers drop, are put in.
 */
export function useTypedScans(field: RefObject<HTMLInputElement | null>): void {
  useEffect(() => {
    let altDigits = '';
    const onKey = (event: KeyboardEvent) => {
      const { key, code, ctrlKey: control, altKey: alt, metaKey: meta } = event;
      const read = readKey(altDigits, { down: event.type === 'keydown', key, code, control, alt, meta });
      altDigits = read.altDigits;
      const input = field.current;
      if (!input || read.means === 'other' || event.defaultPrevented) return;
      const focused = document.activeElement;
      if (focused !== input && (isFilledIn(focused) || isPressedBy(focused, key))) return;
      if (focused !== input) {
        input.focus({ preventScroll: true });
        input.setSelectionRange(input.value.length, input.value.length);
      }
      if (read.means !== 'separator') return;
      event.preventDefault();
      insertSeparator(input);
    };
    document.addEventListener('keydown', onKey);
    document.addEventListener('keyup', onKey);
    return () => {
      document.removeEventListener('keydown', onKey);
      document.removeEventListener('keyup', onKey);
    };
  }, [field]);
}

const withoutText: ReadonlySet<string> = new Set(['checkbox', 'radio', 'button', 'submit', 'file']);

/** Another field, or anything in a dialog: what is typed there is meant for it. */
function isFilledIn(focused: Element | null): boolean {
  if (document.querySelector('[role="dialog"]')) return true;
  if (focused instanceof HTMLInputElement) return !withoutText.has(focused.type);
  return focused?.matches('textarea, select, [contenteditable]') ?? false;
}

/** A space presses what is focused. */
function isPressedBy(focused: Element | null, key: string): boolean {
  return key === ' ' && (focused?.matches('button, summary, a, input') ?? false);
}

function insertSeparator(input: HTMLInputElement): void {
  if (input.maxLength > 0 && input.value.length >= input.maxLength) return;
  const end = input.selectionEnd ?? input.value.length;
  input.setRangeText(separator, input.selectionStart ?? end, end, 'end');
  // So that whoever keeps the text of the field learns of it.
  input.dispatchEvent(new Event('input', { bubbles: true }));
}
