import { Button, Group } from '@mantine/core';
import { useState } from 'react';
import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import { type ContactStanding, isSettled } from '../../../../recalls/contacts/contact-standing.js';
import type { RecipientView } from '../../../../recalls/contacts/contacts.views.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import { Entry } from '../../../frame/entries.js';
import { useStudioInstants } from '../../../frame/use-studio-instants.js';
import { usePeople } from '../../../service/studio-answers.js';
import { Sign, type Standing } from '../../../stock/sign.js';
import { useTexts } from '../../../texts/texts.js';
import { CertaintySign } from '../exposures/certainty-sign.js';
import { addresseeOf, mayTell } from './addressee.js';
import { AttemptForm } from './attempt-form.js';
import type { ToTell } from './to-tell.js';

const signs: Record<ContactStanding, Standing> = {
  'not tried': 'fault',
  'no answer': 'care',
  'message left': 'care',
  reached: 'good',
  refused: 'good',
  unreachable: 'over',
};

/** Somebody who is to be told: who, how it stands, and the ways to tell them. */
export function RecipientEntry({
  standing: { studioId, permissions },
  recall,
  recipient,
  onRead,
}: {
  standing: StandingView;
  recall: RecallView;
  recipient: RecipientView;
  onRead: (toTell: ToTell) => void;
}) {
  const texts = useTexts();
  const words = texts.recallTelling;
  const when = useStudioInstants(studioId);
  const people = usePeople(studioId).answer;
  const [logging, setLogging] = useState(false);
  const { audience, artistId, company, clientName, clientReference, clientContact } = recipient;
  const { standing, lastAt, certainty } = recipient;
  const name =
    company ??
    (artistId === null
      ? [clientName, clientReference].filter((part) => part !== null).join(', ')
      : (people?.find(({ id }) => id === artistId)?.name ?? texts.records.unknownPerson));
  const addressee = addresseeOf(recipient);
  const isOffered = addressee !== undefined && mayTell(permissions, audience);
  // Whoever was named without a delivery gets no prepared message: nothing is known of what they delivered.
  const hasMessage = audience !== 'supplier' || certainty !== null;
  return (
    <Entry
      name={name}
      below={
        !isOffered ? undefined : logging ? (
          <AttemptForm
            studioId={studioId}
            recallId={recall.id}
            toTell={{ addressee, name }}
            onRecorded={() => setLogging(false)}
            onCancel={() => setLogging(false)}
          />
        ) : (
          <Group gap="sm">
            {hasMessage && (
              <Button
                variant="default"
                aria-label={words.readFor(name)}
                onClick={() => onRead({ addressee, name })}
              >
                {words.read}
              </Button>
            )}
            {recall.kind === 'recall' && (
              <Button variant="default" aria-label={words.logFor(name)} onClick={() => setLogging(true)}>
                {words.log}
              </Button>
            )}
          </Group>
        )
      }
    >
      <p>
        {recipient.erased && !isSettled(standing) ? (
          <Sign standing="over">{words.erased}</Sign>
        ) : (
          <Sign standing={signs[standing]}>{words.standings[standing]}</Sign>
        )}
      </p>
      {audience === 'client' && certainty !== null && (
        <p>
          <CertaintySign certainty={certainty} />
        </p>
      )}
      {clientContact !== null && <p>{clientContact}</p>}
      {recipient.toldEarlier && <p>{words.toldEarlier}</p>}
      {lastAt !== null && <p>{words.attempts(recipient.attempts, when(lastAt))}</p>}
    </Entry>
  );
}
