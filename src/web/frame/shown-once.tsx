import { Button, Group, TextInput, Title } from '@mantine/core';
import { type ReactNode, useEffect, useRef, useState } from 'react';
import { useTexts } from '../texts/texts.js';
import styles from './shown-once.module.css';

/** A link or token that is shown this once, to be copied; it leaves the page when that is done. */
export function ShownOnce({
  title,
  label,
  value,
  onDone,
  children,
}: {
  title: string;
  label: string;
  value: string;
  onDone: () => void;
  children: ReactNode;
}) {
  const texts = useTexts();
  const field = useRef<HTMLInputElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const [copied, setCopied] = useState<boolean>();

  useEffect(() => heading.current?.focus(), []);

  const copy = async () => {
    try {
      // Not offered at an address without TLS, except localhost.
      await navigator.clipboard.writeText(value);
      setCopied(true);
    } catch {
      field.current?.select();
      setCopied(document.execCommand('copy'));
    }
  };

  return (
    <div className={styles.once}>
      <Title order={2} size="h3" ref={heading} tabIndex={-1}>
        {title}
      </Title>
      {children}
      <TextInput
        ref={field}
        label={label}
        value={value}
        readOnly
        classNames={{ input: styles.value }}
        onFocus={(event) => event.currentTarget.select()}
      />
      <Group gap="sm">
        <Button onClick={() => void copy()}>{texts.shownOnce.copy}</Button>
        <Button variant="default" onClick={onDone}>
          {texts.shownOnce.done}
        </Button>
        <span role="status">
          {copied === true && texts.shownOnce.copied}
          {copied === false && texts.shownOnce.copyFailed}
        </span>
      </Group>
    </div>
  );
}
