import type { PromisedDeliveryView } from '../../../alerts/outbox/deliveries.views.js';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { useTexts } from '../../texts/texts.js';
import { writtenFacts } from '../../today/alert-facts.js';
import { DeliveryEntry } from '../delivery-entry.js';
import { useNameOf } from '../use-name-of.js';
import { useWhereTold } from '../use-where-told.js';

/** A message that was not sent: to whom, about what, and why it may have nowhere to go. */
export function PromisedEntry({
  standing,
  delivery,
}: {
  standing: StandingView;
  delivery: PromisedDeliveryView;
}) {
  const texts = useTexts();
  const words = texts.alertPages.notSent;
  const { studioId } = standing;
  const when = useStudioInstants(studioId);
  const nameOf = useNameOf(studioId);
  const whereOf = useWhereTold(standing);
  const { alert, destination } = delivery;
  const name = alert && (texts.alerts.kinds[alert.kind] ?? alert.kind);
  const about = alert && [name, writtenFacts(alert.facts, texts, when)[0]].filter(Boolean).join(', ');
  const state = destination?.state ?? 'active';
  return (
    <DeliveryEntry
      standing={standing}
      delivery={delivery}
      where={whereOf(delivery) ?? nameOf(destination?.personId ?? null)}
      leadsNowhere={state === 'removed' || state === 'stopped'}
    >
      {alert && about && (
        <p>
          <PageLink to={pathOf({ studioId, area: 'alerts' }, alert.id)} inherit>
            {words.toAlert(about)}
          </PageLink>
        </p>
      )}
      {state !== 'active' && <p>{words.nowhere[state]}</p>}
    </DeliveryEntry>
  );
}
