import { Button, Group } from '@mantine/core';
import { useState } from 'react';
import type { PreparedMessageView } from '../../../../recalls/contacts/contacts.views.js';
import { useTexts } from '../../../texts/texts.js';
import { contactLink } from './contact-link.js';
import { messageText } from './message-text.js';
import styles from './telling.module.css';

/** What can be done with a message here: printed, copied; the device's own programs write and call. */
export function MessageActions({ message }: { message: PreparedMessageView }) {
  const texts = useTexts();
  const words = texts.recallTelling;
  const [copied, setCopied] = useState<boolean>();
  const { recipientContact, drill, heading } = message;
  const link = recipientContact === null || drill ? undefined : contactLink(recipientContact);
  const copy = async () => setCopied(await copyText(messageText(message)));
  return (
    <div className={styles.actions}>
      {recipientContact !== null && <p>{words.contact(recipientContact)}</p>}
      <Group gap="sm">
        <Button onClick={() => window.print()}>{words.print}</Button>
        <Button variant="default" onClick={() => void copy()}>
          {words.copy}
        </Button>
        {link?.kind === 'mail' && (
          <Button
            component="a"
            variant="default"
            href={`${link.address}?subject=${encodeURIComponent(heading)}`}
          >
            {words.mail}
          </Button>
        )}
        {link?.kind === 'call' && (
          <Button component="a" variant="default" href={link.address}>
            {words.call}
          </Button>
        )}
        <span role="status">
          {copied === true && texts.shownOnce.copied}
          {copied === false && words.copyFailed}
        </span>
      </Group>
    </div>
  );
}

async function copyText(text: string): Promise<boolean> {
  try {
    // Not offered at an address without TLS, except localhost.
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    const field = document.createElement('textarea');
    field.value = text;
    document.body.append(field);
    field.select();
    const copied = document.execCommand('copy');
    field.remove();
    return copied;
  }
}
