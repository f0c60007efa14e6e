import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { PersonView } from '../../identity/people.views.js';
import type { BadgeView } from '../../identity/tablets/tablets.views.js';
import { Entry } from '../frame/entries.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { ProblemOrSignInAgain } from '../sign-in/sign-in-again.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { makeLink } from './access.requests.js';
import { ChangePersonForm } from './change-person-form.js';
import type { MadeLink } from './made-link-note.js';
import { PersonAccess } from './person-access.js';

/** One person, with what can be changed of them. */
export function PersonEntry({
  studioId,
  person,
  isMe,
  badge,
  onChanged,
  onLink,
}: {
  studioId: string;
  person: PersonView;
  isMe: boolean;
  badge: BadgeView | undefined;
  onChanged: () => Promise<void>;
  onLink: (link: MadeLink) => Promise<void>;
}) {
  const texts = useTexts();
  const [changing, setChanging] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const name = person.name ?? texts.people.noName;
  const { run, busy, problem } = useAction(async () => {
    const link = await makeLink(studioId, person.id, ids.for({ personId: person.id }));
    ids.renew();
    await onLink({ ...link, personName: name, isForNewPassword: person.hasAccount });
  });
  const facts = [
    texts.roles[person.role],
    person.until !== null && texts.people.until(writtenDay(person.until, texts.language)),
    person.state === 'left'
      ? texts.people.left
      : person.hasAccount
        ? texts.people.signsIn
        : texts.people.neverSignedIn,
  ].filter((fact) => fact !== false);
  return (
    <Entry
      name={name}
      mark={isMe ? texts.people.you : undefined}
      isOver={person.state === 'left'}
      actions={
        !changing && (
          <>
            {person.state === 'active' && !isMe && (
              <Button
                variant="default"
                loading={busy}
                aria-label={texts.people.inviteOf(name)}
                onClick={() => void run()}
              >
                {texts.people.invite}
              </Button>
            )}
            <Button
              variant="default"
              aria-label={texts.people.changeOf(name)}
              onClick={() => {
                setChanging(true);
                void onChanged();
              }}
            >
              {texts.people.change}
            </Button>
          </>
        )
      }
      below={
        <>
          <ProblemOrSignInAgain problem={problem} onSignedIn={run} />
          {changing && (
            <>
              <ChangePersonForm
                studioId={studioId}
                person={person}
                onChanged={async () => {
                  await onChanged();
                  setChanging(false);
                }}
                onStale={onChanged}
                onCancel={() => setChanging(false)}
              />
              {person.state === 'active' && person.hasAccount && (
                <PersonAccess studioId={studioId} person={person} badge={badge} onChanged={onChanged} />
              )}
            </>
          )}
        </>
      }
    >
      <p>{facts.join(', ')}</p>
    </Entry>
  );
}
