import { Button } from '@mantine/core';
import { type ReactNode, useRef } from 'react';
import type { AlertView } from '../../alerts/alerts.views.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { writtenFacts } from '../today/alert-facts.js';
import { pathOfAlert } from '../today/path-of-alert.js';
import { acknowledge } from './alerts.requests.js';
import { useAlertsAnew } from './use-alerts-anew.js';
import { useNameOf } from './use-name-of.js';

/** Something that has to be seen to: what it is, where, and who has taken it on. */
export function AlertEntry({
  standing,
  alert,
  children,
}: {
  standing: StandingView;
  alert: AlertView;
  /** What else is said of it. */
  children?: ReactNode;
}) {
  const texts = useTexts();
  const { studioId, personId, permissions } = standing;
  const alertsAnew = useAlertsAnew(studioId);
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    await acknowledge(studioId, alert.id, ids.for({ taken: alert.id }));
    ids.renew();
    await alertsAnew();
  });
  const name = texts.alerts.kinds[alert.kind] ?? alert.kind;
  const subject = pathOfAlert(studioId, alert);
  const nameOf = useNameOf(studioId);
  const { acknowledgedBy, givenTo, endsWhenAcknowledged } = alert;
  const whose = () => {
    if (acknowledgedBy === personId) return texts.alerts.takenBy(texts.alerts.you);
    if (acknowledgedBy !== null) return texts.alerts.takenBy(nameOf(acknowledgedBy) ?? texts.alerts.somebody);
    if (givenTo === personId) return texts.alertPages.givenTo(texts.alertPages.toMe);
    if (givenTo !== null) return texts.alertPages.givenTo(nameOf(givenTo) ?? texts.alerts.somebody);
    return texts.alerts.severities[alert.severity];
  };
  const facts = writtenFacts(alert.facts, texts, useStudioInstants(studioId));
  const about = facts[0] ?? '';
  return (
    <Entry
      name={
        <PageLink
          to={pathOf({ studioId, area: 'alerts' }, alert.id)}
          alone
          aria-label={texts.alertPages.details(name, about)}
        >
          {name}
        </PageLink>
      }
      mark={whose()}
      actions={
        <>
          {subject !== undefined && (
            <PageLink to={subject} alone aria-label={texts.alerts.lookAt(name, about)}>
              {texts.alerts.look}
            </PageLink>
          )}
          {alert.closedAt === null && acknowledgedBy === null && permissions.includes('answer alerts') && (
            <Button
              variant="default"
              loading={busy}
              aria-label={(endsWhenAcknowledged ? texts.alerts.seeOf : texts.alerts.takeOn)(name, about)}
              onClick={() => void run()}
            >
              {endsWhenAcknowledged ? texts.alerts.see : texts.alerts.take}
            </Button>
          )}
        </>
      }
      below={<ProblemNote problem={problem} />}
    >
      <p>{facts.join(', ')}</p>
      {children}
    </Entry>
  );
}
