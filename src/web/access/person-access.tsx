import { Button, Group, Title } from '@mantine/core';
import { useRef } from 'react';
import type { PersonView } from '../../identity/people.views.js';
import type { BadgeView } from '../../identity/tablets/tablets.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RequestIds } from '../service/request-ids.js';
import { saveFile } from '../service/save-file.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstantHere } from '../texts/written-dates.js';
import { makeBadge, signOutPerson, withdrawBadge } from './access.requests.js';

/** How a person comes in besides their own account: the badge for tablets; and how to put them out everywhere. */
export function PersonAccess({
  studioId,
  person,
  badge,
  onChanged,
}: {
  studioId: string;
  person: PersonView;
  badge: BadgeView | undefined;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const ids = useRef(new RequestIds()).current;
  const name = person.name ?? texts.people.noName;
  const when = (instant: string) => writtenInstantHere(instant, texts.language);
  const printing = useAction(async () => {
    const file = await makeBadge(studioId, person.id, ids.for({ badge: person.id }));
    ids.renew();
    saveFile(file, 'badge.pdf');
    await onChanged();
  });
  const used =
    badge?.lastUsedAt == null ? texts.people.badgeNeverUsed : texts.people.badgeUsed(when(badge.lastUsedAt));
  return (
    <>
      <Title order={3} mt="xl">
        {texts.people.badge}
      </Title>
      <p>{texts.people.badgeHint}</p>
      <p>{badge ? texts.people.hasBadge(when(badge.createdAt), used) : texts.people.noBadge}</p>
      <ProblemNote problem={printing.problem} />
      <Group gap="sm">
        <Button variant="default" loading={printing.busy} onClick={() => void printing.run()}>
          {badge ? texts.people.printBadgeAgain : texts.people.printBadge}
        </Button>
        {badge && (
          <ConfirmButton
            question={texts.people.withdrawBadgeQuestion(name)}
            action={async () => {
              await withdrawBadge(studioId, person.id, ids.for({ withdrawn: badge.id }));
              await onChanged();
            }}
          >
            {texts.people.withdrawBadge}
          </ConfirmButton>
        )}
      </Group>
      <Title order={3} mt="xl">
        {texts.people.signOut}
      </Title>
      <p>{texts.people.signOutHint}</p>
      <ConfirmButton
        question={texts.people.signOutQuestion(name)}
        action={async () => {
          await signOutPerson(studioId, person.id, ids.for({ signOut: person.id }));
          ids.renew();
        }}
      >
        {texts.people.signOut}
      </ConfirmButton>
    </>
  );
}
