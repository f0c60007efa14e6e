import { Button } from '@mantine/core';
import { useRef } from 'react';
import type { AlertView } from '../../alerts/alerts.views.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { writtenFacts } from './alert-facts.js';
import { acknowledge } from './alerts.requests.js';
import { pathOfAlert } from './path-of-alert.js';

/** Something that has to be seen to: what it is, where, and who has taken it on. */
export function AlertEntry({
  standing,
  alert,
  takenBy,
  onTaken,
}: {
  standing: StandingView;
  alert: AlertView;
  /** The name of who has taken it on, where it is known. */
  takenBy: string | undefined;
  onTaken: () => Promise<void>;
}) {
  const texts = useTexts();
  const { studioId, personId, permissions } = standing;
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    await acknowledge(studioId, alert.id, ids.for({ taken: alert.id }));
    ids.renew();
    await onTaken();
  });
  const name = texts.alerts.kinds[alert.kind] ?? alert.kind;
  const subject = pathOfAlert(studioId, alert);
  const isMine = alert.acknowledgedBy === personId;
  const facts = writtenFacts(alert.facts, texts, useStudioInstants(studioId));
  return (
    <Entry
      name={name}
      mark={
        alert.acknowledgedBy === null
          ? texts.alerts.severities[alert.severity]
          : texts.alerts.takenBy(isMine ? texts.alerts.you : (takenBy ?? texts.alerts.somebody))
      }
      actions={
        <>
          {subject !== undefined && (
            <PageLink to={subject} alone aria-label={texts.alerts.lookAt(name, facts[0] ?? '')}>
              {texts.alerts.look}
            </PageLink>
          )}
          {alert.acknowledgedBy === null && permissions.includes('answer alerts') && (
            <Button
              variant="default"
              loading={busy}
              aria-label={texts.alerts.takeOn(name, facts[0] ?? '')}
              onClick={() => void run()}
            >
              {texts.alerts.take}
            </Button>
          )}
        </>
      }
      below={<ProblemNote problem={problem} />}
    >
      <p>{facts.join(', ')}</p>
    </Entry>
  );
}
