import { Button, Stack, Title } from '@mantine/core';
import { useState } from 'react';
import type { EnrolledTabletView, TabletPersonView } from '../../identity/tablets/tablets.views.js';
import { Threshold } from '../frame/threshold.js';
import { useTexts } from '../texts/texts.js';
import { BadgeField } from './badge-field.js';
import { PinPad } from './pin-pad.js';
import styles from './tablet-page.module.css';

/** Where whoever takes up a shared tablet says who they are: by badge, or by name and PIN. */
export function TabletPage({
  tablet,
  onSignedIn,
  onWithPassword,
}: {
  tablet: EnrolledTabletView;
  onSignedIn: () => Promise<void>;
  onWithPassword: () => void;
}) {
  const texts = useTexts();
  const [person, setPerson] = useState<TabletPersonView>();
  return (
    <Threshold title={tablet.studioName} lead={texts.tablet.lead(tablet.name)}>
      <Stack gap="xl">
        {person ? (
          <PinPad person={person} onSignedIn={onSignedIn} onCancel={() => setPerson(undefined)} />
        ) : (
          <>
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
            <div>
              <Button variant="default" onClick={onWithPassword}>
                {texts.tablet.withPassword}
              </Button>
            </div>
          </>
        )}
      </Stack>
    </Threshold>
  );
}
