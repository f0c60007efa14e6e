import { useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { bookingColumns, bookingExample } from '../../../sessions/bookings/booking-columns.js';
import type { BookingRowView } from '../../../sessions/bookings/bookings.views.js';
import { type VisitKind, visitKinds } from '../../../sessions/vocabulary.js';
import { treats } from '../../access/treats.js';
import { Choice } from '../../frame/choice.js';
import { PageLink } from '../../frame/navigation.js';
import { Note } from '../../frame/note.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { usePeople, useProcedures, useStudio } from '../../service/studio-answers.js';
import type { Texts } from '../../texts/en/english.js';
import { useTexts } from '../../texts/texts.js';
import { ColumnsHelp } from '../columns-help.js';
import { FileSource } from '../file-source.js';
import { JudgedRows } from '../judged-rows.js';
import { Judgement } from '../judgement.js';
import styles from '../taking-in.module.css';
import { type BookingDefaults, previewBookings, takeInBookings } from '../taking-in.requests.js';
import { useTakingIn } from '../use-taking-in.js';

/** What is booked already, from a list or a calendar. Names are shown, for who is meant must be compared. */
export function BookingsPage({ standing: { studioId, studioName } }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.bookings;
  const [forAll, setForAll] = useState<BookingDefaults>({});
  const file = useTakingIn(
    (text) => previewBookings(studioId, { ...forAll, text }),
    (id, text) => takeInBookings(studioId, { ...forAll, id, text }),
    (text) => ({ ...forAll, text }),
  );
  const studio = useStudio(studioId);
  const { preview, taken } = file;
  const timeZone = studio.answer?.timeZone;
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={texts.takingIn.begin} hint={words.beginHint}>
        <ColumnsHelp
          columns={bookingColumns}
          example={bookingExample}
          said={words.columns}
          fileName="bookings"
        />
        <details className={styles.columns}>
          <summary>{words.calendar}</summary>
          <ul>
            {words.calendarRules.map((rule) => (
              <li key={rule}>{rule}</li>
            ))}
          </ul>
        </details>
      </Section>
      <Section title={texts.takingIn.bring} hint={words.bringHint}>
        <FileSource
          accept=".csv,.tsv,.txt,.ics,text/csv,text/calendar"
          text={file.text}
          onBrought={file.bring}
          onLook={file.look}
          busy={file.isLooking}
        >
          <ForAll
            studioId={studioId}
            value={forAll}
            onChange={(chosen) => {
              setForAll(chosen);
              file.doubt();
            }}
          />
        </FileSource>
        <div className={styles.outcome}>
          <ProblemNote problem={file.problem ?? studio.problem} />
          {taken && (
            <Note kind="good">
              <p>{words.taken(taken.counts)}</p>
              <p className={styles.links}>
                <PageLink to={pathOf({ studioId, area: 'today' })}>{words.toToday}</PageLink>
              </p>
            </Note>
          )}
        </div>
      </Section>
      {preview && timeZone !== undefined && (
        <Section title={texts.takingIn.preview} hint={texts.takingIn.previewHint}>
          <Judgement
            preview={preview}
            made={words.made(preview.counts)}
            changed={file.changed}
            nothingNew={preview.counts.sessions === 0}
            busy={file.isTakingIn}
            onTakeIn={file.takeIn}
          />
          <JudgedRows
            rows={preview.rows}
            nameOf={({ clientName, clientReference }) => clientName ?? clientReference ?? ''}
            markOf={({ effect, newClient }) =>
              effect === null ? undefined : newClient ? words.withNewClient : words.effects[effect]
            }
            factsOf={(row) => <p>{factsOf(row, texts, timeZone).join(', ')}</p>}
          />
        </Section>
      )}
    </Page>
  );
}

/** What holds for every booking that does not say it itself. */
function ForAll({
  studioId,
  value,
  onChange,
}: {
  studioId: string;
  value: BookingDefaults;
  onChange: (value: BookingDefaults) => void;
}) {
  const texts = useTexts();
  const words = texts.bookings;
  const people = usePeople(studioId);
  const procedures = useProcedures(studioId);
  const artists = people.answer?.filter(treats) ?? [];
  const offered = procedures.answer ?? [];
  /** Without what is not chosen. */
  const choose = <Key extends keyof BookingDefaults>(key: Key, chosen: BookingDefaults[Key] | '') => {
    const { [key]: _, ...rest } = value;
    onChange(chosen === '' ? rest : { ...rest, [key]: chosen });
  };
  return (
    <>
      <ProblemNote problem={people.problem ?? procedures.problem} />
      <Choice
        label={words.artistForAll}
        value={value.artistId ?? ''}
        none={words.asTheRowSays}
        choices={artists.map(({ id, name }) => ({ value: id, label: name ?? '' }))}
        onChange={(chosen) => choose('artistId', chosen)}
      />
      <Choice
        label={words.procedureForAll}
        description={words.procedureForAllHint}
        value={value.procedureId ?? ''}
        none={words.asTheRowSays}
        choices={offered.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={(chosen) => choose('procedureId', chosen)}
      />
      <Choice<VisitKind>
        label={words.visitForAll}
        value={value.visitKind ?? ''}
        none={words.asTheRowSays}
        choices={visitKinds.map((kind) => ({ value: kind, label: texts.visitKinds[kind] }))}
        onChange={(chosen) => choose('visitKind', chosen)}
      />
    </>
  );
}

function factsOf(row: BookingRowView, texts: Texts, timeZone: string): string[] {
  const { bookings: words, visitKinds: kinds, language } = texts;
  const start =
    row.plannedStart === null
      ? null
      : new Intl.DateTimeFormat(language, { dateStyle: 'full', timeStyle: 'short', timeZone }).format(
          new Date(row.plannedStart),
        );
  return [
    start,
    row.procedure,
    row.visitKind === null ? null : kinds[row.visitKind as VisitKind],
    row.artist === null ? null : words.with(row.artist),
    row.clientName !== null && row.clientReference !== null ? words.reference(row.clientReference) : null,
  ].filter((fact) => fact !== null);
}
