import { Button, NativeSelect } from '@mantine/core';
import { type ReactNode, useEffect, useState } from 'react';
import { useNavigate } from 'react-router';
import { DisplayChoices } from '../account/display-choices.js';
import { LiveAlerts } from '../alerts/live/live-alerts.js';
import { UrgentBadge } from '../alerts/live/urgent-badge.js';
import { NetworkNote } from '../offline/network-note.js';
import { Sender } from '../offline/sender.js';
import { useAction } from '../service/use-action.js';
import { leave } from '../sign-in/leave.js';
import { useRequester } from '../sign-in/requester.js';

import { useNameOnTablet } from '../start/use-name-on-tablet.js';
import { useTexts } from '../texts/texts.js';
import styles from './frame.module.css';
import { Mark } from './mark.js';
import { PageLink } from './navigation.js';
import { areasOf, pathOf, placeOf } from './places.js';

/** What stands around every page of somebody who is signed in: where they are, where they may go, and the way out. */
export function Frame({ path, children }: { path: string; children: ReactNode }) {
  const texts = useTexts();
  const open = useNavigate();
  const { studios, signInName } = useRequester();
  const nameOnTablet = useNameOnTablet();
  const [chosen, setChosen] = useState<string>();
  const named = placeOf(path)?.studioId;
  useEffect(() => {
    if (named !== undefined) setChosen(named);
  }, [named]);
  const studio = studios.find(({ studioId }) => studioId === (named ?? chosen)) ?? studios[0];

  const leaving = useAction(async () => {
    // Where the service is not reached, the next page tells it as soon as it is.
    await leave().catch(() => undefined);
    // The next page load starts from nothing, so nothing of this person stays in the window.
    window.location.assign('/');
  });

  const change = (studioId: string) => {
    setChosen(studioId);
    const area = placeOf(path)?.area;
    if (area !== undefined) void open(pathOf({ studioId, area }));
  };

  const links: { to: string; name: string; badge?: ReactNode }[] = [
    ...(studios.length === 1 ? [] : [{ to: '/start', name: texts.frame.start }]),
    ...(studio
      ? areasOf(studio.permissions).map((area) => ({
          to: pathOf({ studioId: studio.studioId, area }),
          name: texts.frame[area],
          ...(area === 'alerts' && { badge: <UrgentBadge studioId={studio.studioId} /> }),
        }))
      : []),
    ...(signInName === null ? [] : [{ to: '/account', name: texts.frame.account }]),
  ];

  return (
    <>
      <a className={styles.skip} href="#content">
        {texts.app.toContent}
      </a>
      <header className={styles.top}>
        <div className={styles.inner}>
          <div className={styles.name}>
            <Mark size={30} />
            <span>{texts.app.name}</span>
          </div>
          {studios.length > 1 ? (
            <NativeSelect
              className={styles.studio}
              aria-label={texts.frame.studio}
              value={studio?.studioId}
              data={studios.map(({ studioId, studioName }) => ({ value: studioId, label: studioName }))}
              onChange={(event) => change(event.currentTarget.value)}
            />
          ) : (
            <span className={styles.studio}>{studio?.studioName}</span>
          )}
          {nameOnTablet !== null && <span className={styles.person}>{nameOnTablet}</span>}
          <Button
            variant="subtle"
            className={styles.out}
            loading={leaving.busy}
            onClick={() => void leaving.run()}
          >
            {signInName === null ? texts.frame.changePerson : texts.frame.signOut}
          </Button>
        </div>
        <nav className={styles.inner} aria-label={texts.app.pages}>
          <ul className={styles.pages}>
            {links.map(({ to, name, badge }) => (
              <li key={to}>
                <PageLink
                  to={to}
                  underline="never"
                  className={styles.page ?? ''}
                  {...((to === path || path.startsWith(`${to}/`)) && {
                    'aria-current': 'page',
                  })}
                >
                  {name}
                  {badge}
                </PageLink>
              </li>
            ))}
          </ul>
        </nav>
      </header>
      <main id="content" tabIndex={-1} className={styles.main}>
        <Sender />
        <NetworkNote standing={studio} />
        {studio?.permissions.includes('see alerts') && (
          <LiveAlerts key={studio.studioId} studioId={studio.studioId} path={path} />
        )}
        {children}
      </main>
      <footer className={styles.foot}>
        <DisplayChoices />
      </footer>
    </>
  );
}
