import { Button, Stack, Title } from '@mantine/core';
import { type ReactNode, useState } from 'react';
import type { EnrolledTabletView, TabletPersonView } from '../../identity/tablets/tablets.views.js';
import { useTexts } from '../texts/texts.js';
import { BadgeField } from './badge-field.js';
import { PinPad } from './pin-pad.js';
import styles from './tablet-page.module.css';

/** Says who takes up a shared tablet: by badge, or by name and PIN. */
export function PersonSwitch({
  tablet,
  onSignedIn,
  children,
}: {
  tablet: EnrolledTabletView;
  onSignedIn: () => Promise<void>;
  /** Another way in, where there is one. */
  children?: ReactNode;
}) {
  const texts = useTexts();
  const [person, setPerson] = useState<TabletPersonView>();
  if (person) {
    return <PinPad person={person} onSignedIn={onSignedIn} onCancel={() => setPerson(undefined)} />;
  }
  return (
    <Stack gap="xl">
      <BadgeField onSignedIn={onSignedIn} />
      <div>
        <Title order={2}>{texts.tablet.people}</Title>
        {tablet.people.length === 0 && <p>{texts.tablet.nobody}</p>}
        <ul className={styles.people}>
          {tablet.people.map((each) => (
            <li key={each.personId}>
              <Button
                variant="default"
                size="xl"
                fullWidth
                justify="flex-start"
                onClick={() => setPerson(each)}
              >
                {each.name}
              </Button>
            </li>
          ))}
        </ul>
      </div>
      {children}
    </Stack>
  );
}
