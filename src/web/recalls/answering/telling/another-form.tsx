import { Button, Group, TextInput } from '@mantine/core';
import { useState } from 'react';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import { Fields } from '../../../frame/fields.js';
import { useTexts } from '../../../texts/texts.js';
import { AttemptForm } from './attempt-form.js';
import styles from './telling.module.css';
import type { ToTell } from './to-tell.js';

const longestName = 200;

/** Somebody who is not listed: a supplier of whom no delivery is known, or an authority. */
export function AnotherForm({
  studioId,
  recall,
  audience,
  onRead,
}: {
  studioId: string;
  recall: RecallView;
  audience: 'supplier' | 'authority';
  onRead: (toTell: ToTell) => void;
}) {
  const words = useTexts().recallTelling;
  const [company, setCompany] = useState('');
  const [logging, setLogging] = useState<ToTell>();
  const isDrill = recall.kind === 'drill';
  const named = (): ToTell => {
    const name = company.trim();
    return { addressee: { audience, company: name }, name };
  };
  // Of what an unlisted supplier delivered nothing is known, so there is no message to prepare.
  if (audience === 'supplier' && isDrill) return null;
  return (
    <div className={styles.another}>
      {logging ? (
        <AttemptForm
          studioId={studioId}
          recallId={recall.id}
          toTell={logging}
          onRecorded={() => {
            setLogging(undefined);
            setCompany('');
          }}
          onCancel={() => setLogging(undefined)}
        />
      ) : (
        <Fields
          label={words.notListed}
          onSubmit={() => (audience === 'authority' ? onRead(named()) : setLogging(named()))}
        >
          <TextInput
            label={words.another[audience]}
            description={words.companyHint[audience]}
            required
            autoComplete="off"
            maxLength={longestName}
            value={company}
            onChange={(event) => setCompany(event.currentTarget.value)}
          />
          <Group gap="sm">
            {audience === 'authority' && (
              <Button type="submit" variant="default">
                {words.read}
              </Button>
            )}
            {!isDrill && (
              <Button variant="default" disabled={company.trim() === ''} onClick={() => setLogging(named())}>
                {words.log}
              </Button>
            )}
          </Group>
        </Fields>
      )}
    </div>
  );
}
