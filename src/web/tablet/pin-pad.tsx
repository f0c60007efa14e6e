import { Button, Group } from '@mantine/core';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { mostDigits } from '../../identity/tablets/pin-fault.js';
import type { TabletPersonView } from '../../identity/tablets/tablets.views.js';
import { Fields } from '../frame/fields.js';
import { PasswordField } from '../frame/password-field.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useWait } from '../frame/use-wait.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { switchTo } from './tablet.requests.js';
import styles from './tablet-page.module.css';

const digits = ['1', '2', '3', '4', '5', '6', '7', '8', '9', '0'];

/** A PIN, typed or pressed with gloves on. */
export function PinPad({
  person,
  onSignedIn,
  onCancel,
}: {
  person: TabletPersonView;
  onSignedIn: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const [pin, setPin] = useState('');
  const { run, busy, problem } = useAction(async () => {
    const typed = pin;
    setPin('');
    await switchTo({ personId: person.personId, pin: typed });
    await onSignedIn();
  });
  const wait = useWait(problem);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (problem) field.current?.focus();
  }, [problem]);
  const add = (digit: string) => setPin((before) => (before + digit).slice(0, mostDigits));
  return (
    <Fields onSubmit={() => void run()} label={texts.tablet.pinOf(person.name)}>
      <PasswordField
        purpose="off"
        ref={field}
        autoFocus
        inputMode="none"
        label={texts.tablet.pinOf(person.name)}
        maxLength={mostDigits}
        value={pin}
        onChange={(event) => setPin(event.currentTarget.value.replace(/\D/g, ''))}
      />
      <div className={styles.pad}>
        {digits.map((digit) => (
          <Key key={digit} name={texts.tablet.digit(digit)} onPress={() => add(digit)}>
            {digit}
          </Key>
        ))}
        <Key isWide name={texts.tablet.erase} onPress={() => setPin((before) => before.slice(0, -1))}>
          {texts.tablet.erase}
        </Key>
      </div>
      <ProblemNote problem={problem} secondsToWait={wait} />
      <Group gap="sm">
        <Button type="submit" loading={busy} disabled={wait > 0}>
          {texts.tablet.submit}
        </Button>
        <Button variant="default" onClick={onCancel}>
          {texts.tablet.somebodyElse}
        </Button>
      </Group>
    </Fields>
  );
}

/** Pressing it leaves the field focused, so that a keyboard goes on working too. */
function Key({
  name,
  isWide = false,
  onPress,
  children,
}: {
  name: string;
  isWide?: boolean;
  onPress: () => void;
  children: ReactNode;
}) {
  return (
    <Button
      variant="default"
      size="xl"
      px={0}
      aria-label={name}
      className={isWide ? styles.wide : undefined}
      onMouseDown={(event) => event.preventDefault()}
      onClick={onPress}
    >
      {children}
    </Button>
  );
}
