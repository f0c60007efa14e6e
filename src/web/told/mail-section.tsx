import { Entries } from '../frame/entries.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useTexts } from '../texts/texts.js';
import { AddMailForm } from './add-mail-form.js';
import { DestinationEntry } from './destination-entry.js';
import type { DestinationsSeen } from './use-destinations.js';

/** One's own addresses to which alerts are mailed. */
export function MailSection({
  studioId,
  personId,
  destinations: { answer, problem, reload },
}: {
  studioId: string;
  personId: string;
  destinations: DestinationsSeen;
}) {
  const texts = useTexts();
  const words = texts.told;
  const addresses = answer?.items.filter(({ kind }) => kind === 'mail') ?? [];
  const isWaiting = answer?.mailServerSet === false;
  return (
    <Section title={words.mail} hint={words.mailHint}>
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {isWaiting && (
        <Note kind="plain">
          <p>{words.noMailServer}</p>
        </Note>
      )}
      {answer && addresses.length === 0 && <p>{words.noMail}</p>}
      {addresses.length > 0 && (
        <Entries label={words.mail}>
          {addresses.map((address) => (
            <DestinationEntry
              key={address.id}
              studioId={studioId}
              destination={address}
              waitsBecause={isWaiting ? words.noMailServer : undefined}
              onChanged={reload}
            />
          ))}
        </Entries>
      )}
      {answer && (
        <AddMailForm studioId={studioId} personId={personId} label={words.addMail} onAdded={reload} />
      )}
    </Section>
  );
}
