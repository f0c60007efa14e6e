import type { AlertView } from '../../../alerts/alerts.views.js';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Facts } from '../../frame/facts.js';
import { PageLink } from '../../frame/navigation.js';
import { Section } from '../../frame/section.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { Sign } from '../../stock/sign.js';
import { useTexts } from '../../texts/texts.js';
import { writtenFacts } from '../../today/alert-facts.js';
import { pathOfAlert } from '../../today/path-of-alert.js';
import { nextStep } from '../next-step.js';
import { useNameOf } from '../use-name-of.js';
import { writtenMorning } from '../written-morning.js';

const signs = { urgent: 'fault', warning: 'care', notice: 'good' } as const;

/** What is wrong, how it stands, and what to do next. */
export function FactsSection({ standing, alert }: { standing: StandingView; alert: AlertView }) {
  const texts = useTexts();
  const words = texts.alertPages.one;
  const { studioId, personId } = standing;
  const when = useStudioInstants(studioId);
  const nameOf = useNameOf(studioId);
  const who = (id: string) =>
    id === personId ? texts.alertPages.toMe : (nameOf(id) ?? texts.alerts.somebody);
  const subject = pathOfAlert(studioId, alert);
  const facts = writtenFacts(alert.facts, texts, when);
  const { kind, severity, openedAt, acknowledgedAt, acknowledgedBy } = alert;
  const { closedAt, closedBy, givenTo, putOffUntil } = alert;
  return (
    <Section title={words.facts}>
      <Facts
        facts={[
          [
            texts.alertPages.severity,
            <Sign key="severity" standing={closedAt === null ? signs[severity] : 'over'}>
              {closedAt === null ? texts.alerts.severities[severity] : texts.alertPages.states.closed}
            </Sign>,
          ],
          [words.about, facts.join(', ')],
          [texts.alertPages.nextStep, closedAt === null && nextStep(kind, texts)],
          [words.since, when(openedAt)],
          [
            alert.endsWhenAcknowledged ? words.seen : words.taken,
            acknowledgedBy !== null &&
              acknowledgedAt !== null &&
              words.takenAt(who(acknowledgedBy), when(acknowledgedAt)),
          ],
          [words.given, givenTo !== null && who(givenTo)],
          [
            words.putOff,
            closedAt === null && putOffUntil !== null && writtenMorning(putOffUntil, texts, when),
          ],
          [
            words.until,
            closedAt !== null &&
              (closedBy === null
                ? words.closedByItself(when(closedAt))
                : words.closedBy(when(closedAt), who(closedBy))),
          ],
        ]}
      />
      {subject !== undefined && (
        <p>
          <PageLink to={subject} alone>
            {texts.alertPages.act}
          </PageLink>
        </p>
      )}
    </Section>
  );
}
