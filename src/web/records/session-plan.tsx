import { Button, Group } from '@mantine/core';
import { useRef, useState } from 'react';
import type { SessionView } from '../../sessions/session-record.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Section } from '../frame/section.js';
import { Events } from '../service/events.js';
import { useTexts } from '../texts/texts.js';
import { ChangePlanForm } from './change-plan-form.js';
import { cancelSession, recordNonAttendance } from './records.requests.js';

/** What can be done about a session that is not over: plan it anew, cancel it, or note that nobody came. */
export function SessionPlan({
  studioId,
  session,
  timeZone,
  onChanged,
}: {
  studioId: string;
  session: SessionView;
  timeZone: string;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const [changing, setChanging] = useState(false);
  const events = useRef(new Events()).current;
  const { reference } = session.client;
  return (
    <Section title={texts.session.plan} hint={texts.session.planHint}>
      {changing ? (
        <ChangePlanForm
          studioId={studioId}
          session={session}
          timeZone={timeZone}
          onChanged={async () => {
            await onChanged();
            setChanging(false);
          }}
          onStale={onChanged}
          onCancel={() => setChanging(false)}
        />
      ) : (
        <Group gap="sm">
          <Button variant="default" onClick={() => setChanging(true)}>
            {texts.session.change}
          </Button>
          <ConfirmButton
            question={texts.session.cancelQuestion(reference)}
            action={async () => {
              await cancelSession(studioId, session.id, events.of({ cancel: session.id }));
              await onChanged();
            }}
          >
            {texts.session.cancel}
          </ConfirmButton>
          <ConfirmButton
            question={texts.session.notAttendedQuestion(reference)}
            action={async () => {
              await recordNonAttendance(studioId, session.id, events.of({ notAttended: session.id }));
              await onChanged();
            }}
          >
            {texts.session.notAttended}
          </ConfirmButton>
        </Group>
      )}
    </Section>
  );
}
