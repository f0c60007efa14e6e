import type { ExposedSessionView } from '../../../../recalls/exposures/exposures.views.js';
import { Entry } from '../../../frame/entries.js';
import { PageLink } from '../../../frame/navigation.js';
import { PagedEntries } from '../../../frame/paged-entries.js';
import { pathOf } from '../../../frame/places.js';
import { usePages } from '../../../service/use-pages.js';
import { useTexts } from '../../../texts/texts.js';
import { writtenDay } from '../../../texts/written-dates.js';
import { CertaintySign } from './certainty-sign.js';
import { ExposedUse } from './exposed-use.js';
import { listExposedSessions } from './exposures.requests.js';

/** When and where a client was touched, with what, and why it is only possible where it is. */
export function ExposedSessions({
  studioId,
  recallId,
  clientId,
  label,
}: {
  studioId: string;
  recallId: string;
  /** Left out: of everybody, each with whose it was. */
  clientId?: string;
  label: string;
}) {
  const words = useTexts().recallExposures;
  const list = usePages(['exposed sessions of recall', studioId, recallId, clientId ?? 'all'], (after) =>
    listExposedSessions(studioId, recallId, clientId, after),
  );
  return (
    <PagedEntries
      label={label}
      list={list}
      none={words.noClients}
      entry={(session) => (
        <SessionEntry
          key={session.sessionId}
          studioId={studioId}
          session={session}
          saysWhose={clientId === undefined}
        />
      )}
    />
  );
}

function SessionEntry({
  studioId,
  session,
  saysWhose,
}: {
  studioId: string;
  session: ExposedSessionView;
  saysWhose: boolean;
}) {
  const texts = useTexts();
  const words = texts.recallExposures;
  return (
    <Entry
      name={
        <PageLink alone to={pathOf({ studioId, area: 'records' }, 'sessions', session.sessionId)}>
          {[writtenDay(session.day, texts.language), ...(saysWhose ? [session.clientReference] : [])].join(
            ', ',
          )}
        </PageLink>
      }
    >
      <p>
        <CertaintySign certainty={session.certainty} />
      </p>
      {session.reasons.map((reason) => (
        <p key={reason}>{words.reasons[reason]}</p>
      ))}
      <p>
        {[
          texts.visitKinds[session.visitKind],
          session.procedureName,
          texts.records.bodyPlaces[session.bodyPlace],
          words.by(session.artistName ?? texts.records.unknownPerson),
          ...(session.recordedFrom === 'tray' ? [] : [words.recordedFrom[session.recordedFrom]]),
        ].join(', ')}
      </p>
      {session.uses.map((use) => (
        <ExposedUse key={use.id} use={use} />
      ))}
    </Entry>
  );
}
