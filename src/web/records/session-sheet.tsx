import { Title } from '@mantine/core';
import type { ReactNode } from 'react';
import type { PersonView } from '../../identity/people.views.js';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { KitItemView } from '../../sessions/kit-lists.views.js';
import type { ClientRecordView, SessionView } from '../../sessions/session-record.views.js';
import { Facts } from '../frame/facts.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstant } from '../texts/written-dates.js';
import { MixList } from './mix-list.js';
import { firstRecordedAt } from './recorded-later.js';
import styles from './session-sheet.module.css';
import { UnusedList } from './unused-list.js';
import { UseTable } from './use-table.js';

/**
 * The record of one visit as it is read, printed and kept: what a written client record asks for (NEHA Body Art Model
 * Code, March 2024, §7 [P]) and what else is known. A usual visit fits one page.
 */
export function SessionSheet({
  standing: { studioId, studioName, permissions },
  record,
  session,
  kit,
  people,
  showsName,
}: {
  standing: StandingView;
  record: ClientRecordView;
  session: SessionView;
  kit: readonly KitItemView[];
  people: readonly PersonView[];
  showsName: boolean;
}) {
  const texts = useTexts();
  const { timeZone } = record;
  const at = (instant: string) => writtenInstant(instant, texts.language, timeZone);
  const nameOf = (id: string | null) =>
    people.find((person) => person.id === id)?.name ?? texts.records.unknownPerson;
  const isDone = session.state === 'completed';
  const isOver = isDone || session.state === 'cancelled' || session.state === 'not attended';
  /** What is said of something that may have been said by those who see clients only. */
  const said = (text: string | null, none: string) => {
    if (text !== null) return text;
    if (!permissions.includes('read clients')) return texts.session.notShown;
    // Whoever may see clients is not shown a name only where it was erased, and every word about them with it.
    if (session.client.name === null) return texts.session.wordsErased;
    return isDone ? none : texts.session.notWhileOpen;
  };
  const uses = {
    studioId,
    timeZone,
    nameOf,
    mixes: session.mixes,
    blends: record.blendedPigments,
    firstRecordedAt: firstRecordedAt(session),
  };
  const visit = isDone ? record.occurredAt : null;
  return (
    <article className={styles.sheet} data-sheet aria-label={texts.session.sheet}>
      <header className={styles.head}>
        <p>{studioName}</p>
        <Title order={2}>{texts.session.sheet}</Title>
      </header>
      <div className={styles.facts}>
        <Facts
          facts={[
            [texts.session.client, <strong key="reference">{session.client.reference}</strong>],
            [texts.session.name, showsName && session.client.name],
            [
              isDone ? texts.session.when : texts.session.planned,
              visit !== null || session.plannedStart !== null
                ? `${at(visit ?? session.plannedStart ?? '')} (${timeZone})`
                : texts.session.whenNone,
            ],
            [texts.session.artist, session.artist.name ?? texts.records.unknownPerson],
            [texts.session.procedure, session.procedure.name],
            [texts.session.visit, texts.visitKinds[session.visitKind]],
            [
              texts.session.place,
              [texts.records.bodyPlaces[session.bodyPlace], session.bodyPlaceDetail]
                .filter((part) => part !== null)
                .join(': '),
            ],
            [texts.session.state, texts.sessionStates[session.state]],
            [texts.session.recorded, isDone && texts.session.recordedFrom[session.recordedFrom]],
            [
              texts.session.follows,
              session.followsSessionId !== null && (
                <PageLink to={pathOf({ studioId, area: 'records' }, 'sessions', session.followsSessionId)}>
                  {texts.session.followsLink}
                </PageLink>
              ),
            ],
          ]}
        />
      </div>
      {(isDone || record.pigments.length > 0) && (
        <Part title={texts.session.pigments}>
          {record.pigments.length === 0 && <p>{texts.session.noPigments}</p>}
          <UseTable {...uses} label={texts.session.pigments} uses={record.pigments} />
        </Part>
      )}
      {session.mixes.length > 0 && (
        <Part title={isOver && !isDone ? texts.session.mixesWasted : texts.session.mixes}>
          <MixList mixes={session.mixes} />
        </Part>
      )}
      {(isDone || record.instruments.length > 0) && (
        <Part title={texts.session.instruments}>
          {record.instruments.length === 0 && <p>{texts.session.noInstruments}</p>}
          <UseTable {...uses} label={texts.session.instruments} uses={record.instruments} />
        </Part>
      )}
      {record.others.length > 0 && (
        <Part title={texts.session.others}>
          <UseTable {...uses} label={texts.session.others} uses={record.others} />
        </Part>
      )}
      <UnusedList lines={session.tray} title={texts.session.wasted} />
      {kit.length > 0 && (
        <Part title={texts.session.kit}>
          <p>
            {kit
              .map(
                ({ quantity, productName, configuration }) =>
                  `${quantity} × ${productName ?? configuration ?? ''}`,
              )
              .join('; ')}
          </p>
        </Part>
      )}
      <Part title={texts.session.complications}>
        <p className={styles.text}>{said(session.complications, texts.session.noComplications)}</p>
      </Part>
      {session.healedResult && (
        <Part title={texts.session.healed}>
          <p className={styles.text}>
            {texts.session.healedPercent(
              session.healedResult.retainedColourPercent,
              at(session.healedResult.occurredAt),
            )}
            {session.healedResult.note !== null && ` ${session.healedResult.note}`}
            {session.healedResult.seenAtSessionId !== null && (
              <>
                {' '}
                <PageLink
                  to={pathOf({ studioId, area: 'records' }, 'sessions', session.healedResult.seenAtSessionId)}
                >
                  {texts.session.healedSeenAt}
                </PageLink>
              </>
            )}
          </p>
        </Part>
      )}
      {record.reversed.length > 0 && (
        <Part title={texts.session.reversed} hint={texts.session.reversedHint}>
          <UseTable {...uses} label={texts.session.reversed} uses={record.reversed} />
        </Part>
      )}
      <Part title={texts.session.signature}>
        <p>
          {record.signature === null
            ? texts.session.notSigned
            : texts.session.signed(
                record.signature.name ?? texts.records.unknownPerson,
                record.signature.signedAt === null ? '' : at(record.signature.signedAt),
              )}
        </p>
      </Part>
      <footer className={styles.foot}>
        <p>{texts.session.cautions}</p>
        <p className={styles.printed}>{texts.session.printed(at(new Date().toISOString()))}</p>
      </footer>
    </article>
  );
}

function Part({ title, hint, children }: { title: string; hint?: string; children: ReactNode }) {
  return (
    <section className={styles.part}>
      <Title order={3}>{title}</Title>
      {hint !== undefined && <p className={styles.hint}>{hint}</p>}
      {children}
    </section>
  );
}
