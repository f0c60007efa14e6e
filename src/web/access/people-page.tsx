import { useState } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Entries } from '../frame/entries.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { usePeople } from '../service/studio-answers.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { listBadges } from './access.requests.js';
import { AddPersonForm } from './add-person-form.js';
import { type MadeLink, MadeLinkNote } from './made-link-note.js';
import { PersonEntry } from './person-entry.js';

/** Who works in a studio, and as what; each comes in by a link. */
export function PeoplePage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioId, studioName, personId } = standing;
  const { answer: people, problem, reload } = usePeople(studioId);
  const { answer: badges = [], reload: reloadBadges } = useAnswer(['badges', studioId], () =>
    listBadges(studioId),
  );
  const [link, setLink] = useState<MadeLink>();
  const show = async (made: MadeLink) => {
    setLink(made);
    await reload();
  };
  return (
    <Page above={studioName} title={texts.people.title} lead={texts.people.lead}>
      {link && <MadeLinkNote key={link.id} link={link} onDone={() => setLink(undefined)} />}
      <Section title={texts.people.list} hint={texts.people.listHint}>
        <ProblemNote problem={problem} />
        {!people && !problem && <p role="status">{texts.app.loading}</p>}
        {people && (
          <Entries label={texts.people.list}>
            {people.map((person) => (
              <PersonEntry
                key={person.id}
                studioId={studioId}
                person={person}
                isMe={person.id === personId}
                badge={badges.find((badge) => badge.personId === person.id)}
                onChanged={async () => {
                  await Promise.all([reload(), reloadBadges()]);
                }}
                onLink={show}
              />
            ))}
          </Entries>
        )}
      </Section>
      <Section title={texts.people.add} hint={texts.people.addHint}>
        <AddPersonForm studioId={studioId} onLink={show} />
      </Section>
    </Page>
  );
}
