import { Anchor, Title } from '@mantine/core';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { Note } from '../frame/note.js';
import { Page } from '../frame/page.js';
import { Section } from '../frame/section.js';
import { useRequester } from '../sign-in/requester.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import styles from './start-page.module.css';
import { useNameOnTablet } from './use-name-on-tablet.js';

/** Who is signed in, where they work and as what. */
export function StartPage() {
  const texts = useTexts();
  const { signInName, studios } = useRequester();
  const name = useNameOnTablet();
  const onTablet = name === null ? texts.start.onTablet : texts.start.onTabletAs(name);
  return (
    <Page title={texts.start.title} lead={signInName === null ? onTablet : texts.start.as(signInName)}>
      <Section title={texts.start.studios} hint={texts.start.studiosHint}>
        {studios.length === 0 && <p>{texts.start.noStudios}</p>}
        {studios.map((standing) => (
          <Standing key={standing.studioId} standing={standing} />
        ))}
      </Section>
      {signInName !== null && (
        <Section title={texts.start.forPrograms} hint={texts.start.forProgramsHint}>
          <ul className={styles.links}>
            <li>
              <Anchor href="/api/docs">{texts.start.apiDescription}</Anchor>
            </li>
            <li>
              <Anchor href="/api/openapi.json">{texts.start.openApi}</Anchor>
            </li>
          </ul>
        </Section>
      )}
    </Page>
  );
}

function Standing({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const { studioName, role, until, permissions, passkeyNeeded } = standing;
  return (
    <div className={styles.standing}>
      <Title order={3}>{studioName}</Title>
      <p>
        {texts.roles[role]}
        {until !== null && `, ${texts.start.until(writtenDay(until, texts.language))}`}
      </p>
      <p className={styles.hint}>{texts.roleHints[role]}</p>
      {passkeyNeeded && (
        <Note kind="plain">
          <p>{texts.start.passkeyNeeded}</p>
          <PageLink to="/account" alone>
            {texts.start.toAccount}
          </PageLink>
        </Note>
      )}
      <details>
        <summary className={styles.summary}>{texts.start.may}</summary>
        <ul className={styles.permissions}>
          {permissions.map((permission) => (
            <li key={permission}>{texts.permissions[permission] ?? permission}</li>
          ))}
        </ul>
      </details>
    </div>
  );
}
