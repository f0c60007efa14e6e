import { Checkbox } from '@mantine/core';
import { useState } from 'react';
import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import { type ContactAudience, contactAudiences } from '../../../../recalls/vocabulary.js';
import { Choice } from '../../../frame/choice.js';
import { PagedEntries } from '../../../frame/paged-entries.js';
import { Section } from '../../../frame/section.js';
import { usePages } from '../../../service/use-pages.js';
import { useTexts } from '../../../texts/texts.js';
import { mayTell } from './addressee.js';
import { AnotherForm } from './another-form.js';
import { RecipientEntry } from './recipient-entry.js';
import styles from './telling.module.css';
import { listRecipients } from './telling.requests.js';
import type { ToTell } from './to-tell.js';

/** Everybody of an audience, those who are still to be told when that is wished, and the ways to tell them. */
export function RecipientsSection({
  standing,
  recall,
  audience,
  onAudience,
  onRead,
}: {
  standing: StandingView;
  recall: RecallView;
  audience: ContactAudience;
  onAudience: (audience: ContactAudience) => void;
  onRead: (toTell: ToTell) => void;
}) {
  const words = useTexts().recallTelling;
  const { studioId, permissions } = standing;
  const [outstanding, setOutstanding] = useState(false);
  const list = usePages(
    ['recipients of recall', studioId, recall.id, audience, String(outstanding)],
    (after) => listRecipients(studioId, recall.id, audience, outstanding, after),
  );
  return (
    <Section title={words.recipients} hint={words.recipientsHint}>
      <div className={styles.filters}>
        <Choice
          label={words.whom}
          value={audience}
          choices={contactAudiences.map((value) => ({ value, label: words.audiences[value] }))}
          onChange={(value) => value !== '' && onAudience(value)}
        />
        <Checkbox
          label={words.onlyOutstanding}
          checked={outstanding}
          onChange={(event) => setOutstanding(event.currentTarget.checked)}
        />
      </div>
      <PagedEntries
        label={words.audiences[audience]}
        list={list}
        none={outstanding ? words.noneOutstanding(words.audiences[audience]) : words.none[audience]}
        entry={(recipient) => (
          <RecipientEntry
            key={`${recipient.audience} ${recipient.id}`}
            standing={standing}
            recall={recall}
            recipient={recipient}
            onRead={onRead}
          />
        )}
      />
      {(audience === 'supplier' || audience === 'authority') && mayTell(permissions, audience) && (
        <AnotherForm key={audience} studioId={studioId} recall={recall} audience={audience} onRead={onRead} />
      )}
    </Section>
  );
}
