import type {
  ElseInDateView,
  KitLineAtRiskView,
  PlannedSessionView,
} from '../../../../recalls/exposures/planned-sessions.views.js';
import { Entry } from '../../../frame/entries.js';
import { PageLink } from '../../../frame/navigation.js';
import { PagedEntries } from '../../../frame/paged-entries.js';
import { pathOf, pathOfTray } from '../../../frame/places.js';
import { Section } from '../../../frame/section.js';
import { useStudioInstants } from '../../../frame/use-studio-instants.js';
import { usePages } from '../../../service/use-pages.js';
import { nameOf, writtenLabel } from '../../../stock/amounts.js';
import { useTexts } from '../../../texts/texts.js';
import { writtenDay } from '../../../texts/written-dates.js';
import { listPlannedSessions } from './exposures.requests.js';

/** Sessions in setup or planned that would use a lot of the recall, why, and what else may be taken. */
export function PlannedSessions({ studioId, recallId }: { studioId: string; recallId: string }) {
  const words = useTexts().recallExposures;
  const list = usePages(['planned sessions of recall', studioId, recallId], (after) =>
    listPlannedSessions(studioId, recallId, after),
  );
  return (
    <Section title={words.planned} hint={words.plannedHint}>
      <PagedEntries
        label={words.planned}
        list={list}
        none={words.noPlanned}
        entry={(session) => <PlannedEntry key={session.sessionId} studioId={studioId} session={session} />}
      />
    </Section>
  );
}

function PlannedEntry({ studioId, session }: { studioId: string; session: PlannedSessionView }) {
  const texts = useTexts();
  const words = texts.recallExposures;
  const when = useStudioInstants(studioId);
  const { sessionId, state, plannedStart, follows, onTray } = session;
  const inSetup = state === 'in setup';
  return (
    <Entry
      name={
        <PageLink
          alone
          to={
            inSetup
              ? pathOfTray({ studioId, sessionId })
              : pathOf({ studioId, area: 'records' }, 'sessions', sessionId)
          }
        >
          {inSetup || plannedStart === null
            ? `${session.clientReference}, ${texts.sessionStates[state]}`
            : `${session.clientReference}, ${when(plannedStart)}`}
        </PageLink>
      }
    >
      <p>
        {[
          texts.visitKinds[session.visitKind],
          session.procedureName,
          texts.records.bodyPlaces[session.bodyPlace],
          words.by(session.artistName ?? texts.records.unknownPerson),
        ].join(', ')}
      </p>
      {onTray.map(({ trayLineId, containerId, lot, inMix }) => (
        <p key={`${trayLineId} ${containerId}`}>
          {(inMix ? words.inCup : words.onTray)(
            `${nameOf(lot)}, ${lot.lotCode === null ? words.noCode : words.lot(lot.lotCode)}`,
          )}
        </p>
      ))}
      {follows !== null && (
        <p>
          {words.follows}{' '}
          <PageLink to={pathOf({ studioId, area: 'records' }, 'sessions', follows.sessionId)}>
            {writtenDay(follows.day, texts.language)}
          </PageLink>
        </p>
      )}
      {session.kitLines.map((line) => (
        <KitLine key={`${line.productId} ${line.configuration}`} studioId={studioId} line={line} />
      ))}
    </Entry>
  );
}

function KitLine({ studioId, line }: { studioId: string; line: KitLineAtRiskView }) {
  const words = useTexts().recallExposures;
  return (
    <>
      <p>{line.enoughElse ? words.kitEnough(line.label) : words.kitShort(line.label, line.elsePieces)}</p>
      {line.elseInDate.map((other) => (
        <Else key={other.containerId} studioId={studioId} other={other} />
      ))}
    </>
  );
}

function Else({
  studioId,
  other: { containerId, label, labelCode, lotCode, lastDay, pieces },
}: {
  studioId: string;
  other: ElseInDateView;
}) {
  const texts = useTexts();
  const words = texts.recallExposures;
  return (
    <p>
      {words.takeInstead}{' '}
      <PageLink to={pathOf({ studioId, area: 'stock' }, 'containers', containerId)}>
        {`${label}, ${writtenLabel(labelCode)}`}
      </PageLink>
      {`: ${[
        lotCode === null ? words.noCode : words.lot(lotCode),
        texts.amounts.pieces(pieces),
        ...(lastDay === null ? [] : [words.until(writtenDay(lastDay, texts.language))]),
      ].join(', ')}`}
    </p>
  );
}
