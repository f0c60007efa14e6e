import { Button } from '@mantine/core';
import type { EnrolledTabletView } from '../../identity/tablets/tablets.views.js';
import { Threshold } from '../frame/threshold.js';
import { useTexts } from '../texts/texts.js';
import { PersonSwitch } from './person-switch.js';

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
  return (
    <Threshold title={tablet.studioName} lead={texts.tablet.lead(tablet.name)}>
      <PersonSwitch tablet={tablet} onSignedIn={onSignedIn}>
        <div>
          <Button variant="default" onClick={onWithPassword}>
            {texts.tablet.withPassword}
          </Button>
        </div>
      </PersonSwitch>
    </Threshold>
  );
}
