import { Button, Group, VisuallyHidden } from '@mantine/core';
import { useEffect, useState } from 'react';
import type { AlertView } from '../../../alerts/alerts.views.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { useSignedIn } from '../../sign-in/requester.js';
import { useTexts } from '../../texts/texts.js';
import { writtenFacts } from '../../today/alert-facts.js';
import { useAlertsAnew } from '../use-alerts-anew.js';
import { listenToAlerts } from './alert-stream.js';
import { isShownAt } from './is-shown-at.js';
import styles from './live-alerts.module.css';
import { seldom } from './seldom.js';
import { useUrgentAlerts } from './urgent-alerts.js';

/** So often at most alerts are asked anew, however many things happen to them. */
const betweenLooksMilliseconds = 2_000;
/** More would push away what somebody works at; the rest is counted. */
const mostShown = 3;

/** Where a tray is laid nothing may move under the finger. */
const trayPath = /^\/studios\/[^/]+\/today\/trays\//;

/**
 * Keeps what is shown of alerts up to date while a page is looked at, and says what became urgent meanwhile: politely, a
 * screen reader finishes its sentence first.
 * @param path of the page: what it shows itself need not be said, and on that of a tray the number in the menu says it, and
 * a screen reader
 */
export function LiveAlerts({ studioId, path }: { studioId: string; path: string }) {
  const texts = useTexts();
  const words = texts.alertPages.live;
  const alerts = useUrgentAlerts(studioId);
  const alertsAnew = useAlertsAnew(studioId);
  const { refresh } = useSignedIn();
  const [seen, setSeen] = useState<ReadonlySet<string>>();

  useEffect(() => {
    const looking = seldom(() => void alertsAnew(), betweenLooksMilliseconds);
    const end = listenToAlerts(studioId, { onNews: looking.ask, onLost: () => void refresh() });
    return () => {
      end();
      looking.end();
    };
  }, [studioId, alertsAnew, refresh]);

  // What was there when the page was opened is in the menu and on Today. What is gone and comes back is said again.
  useEffect(() => {
    if (alerts === undefined) return;
    setSeen((before) => {
      const known = alerts.filter((alert) => (before?.has(alert.id) ?? true) || isShownAt(path, alert));
      return new Set(known.map(({ id }) => id));
    });
  }, [alerts, path]);

  const fresh =
    seen === undefined
      ? []
      : (alerts ?? []).filter(
          (alert) => alert.acknowledgedBy === null && !seen.has(alert.id) && !isShownAt(path, alert),
        );
  const see = (id: string) => setSeen((before) => new Set(before).add(id));
  const others = fresh.length - mostShown;
  if (trayPath.test(path)) {
    return (
      <VisuallyHidden aria-live="polite">
        {fresh.map((alert) => (
          <UrgentWords key={alert.id} studioId={studioId} alert={alert} />
        ))}
      </VisuallyHidden>
    );
  }
  return (
    <div aria-live="polite" className={styles.live}>
      {fresh.length > 0 && (
        <section aria-label={words.region}>
          {fresh.slice(0, mostShown).map((alert) => (
            <UrgentBanner key={alert.id} studioId={studioId} alert={alert} onSeen={() => see(alert.id)} />
          ))}
          {others > 0 && (
            <p className={styles.others}>
              {words.more(others)}{' '}
              <PageLink to={pathOf({ studioId, area: 'alerts' }, 'all')}>{words.toAll}</PageLink>
            </p>
          )}
        </section>
      )}
    </div>
  );
}

function UrgentBanner({
  studioId,
  alert,
  onSeen,
}: {
  studioId: string;
  alert: AlertView;
  onSeen: () => void;
}) {
  const words = useTexts().alertPages.live;
  const what = useWhat(studioId, alert);
  return (
    <div className={styles.banner}>
      <UrgentWords studioId={studioId} alert={alert} />
      <Group gap="lg">
        <PageLink to={pathOf({ studioId, area: 'alerts' }, alert.id)} alone aria-label={words.lookAt(what)}>
          {words.look}
        </PageLink>
        <Button variant="default" aria-label={words.seenOf(what)} onClick={onSeen}>
          {words.seen}
        </Button>
      </Group>
    </div>
  );
}

function UrgentWords({ studioId, alert }: { studioId: string; alert: AlertView }) {
  const words = useTexts().alertPages.live;
  return (
    <p>
      <strong>{words.urgent}:</strong> {useWhat(studioId, alert)}
    </p>
  );
}

/** What is wrong, and with what. */
function useWhat(studioId: string, alert: AlertView): string {
  const texts = useTexts();
  const [about] = writtenFacts(alert.facts, texts, useStudioInstants(studioId));
  const name = texts.alerts.kinds[alert.kind] ?? alert.kind;
  return about === undefined ? name : `${name}, ${about}`;
}
