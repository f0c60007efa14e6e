import { TextInput } from '@mantine/core';
import { localDay } from '../../identity/local-day.js';
import { type BodyPlace, bodyPlaces, type VisitKind, visitKinds } from '../../sessions/vocabulary.js';
import { treats } from '../access/treats.js';
import { Choice } from '../frame/choice.js';
import { ProblemNote } from '../frame/problem-note.js';
import type { ServiceProblem } from '../service/problem.js';
import { usePeople, useProcedures } from '../service/studio-answers.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { listSessions } from './records.requests.js';
import { StudioTimeField } from './studio-time-field.js';
import type { WrittenStudioTime } from './use-studio-time.js';

export interface PlanDraft {
  artistId: string;
  procedureId: string;
  visitKind: VisitKind | '';
  /** Empty: as the procedure has it. */
  bodyPlace: BodyPlace | '';
  bodyPlaceDetail: string;
  /** An id; empty: left to itself; `none`: no earlier session. */
  follows: string;
}

export const emptyPlan: PlanDraft = {
  artistId: '',
  procedureId: '',
  visitKind: '',
  bodyPlace: '',
  bodyPlaceDetail: '',
  follows: '',
};

/** What is planned of a session, apart from whose it is. */
export function PlanFields({
  studioId,
  clientId,
  draft,
  present,
  start,
  startLabel,
  startFault,
  isNew,
  problem,
  onChange,
}: {
  studioId: string;
  /** Undefined as long as the client is not chosen. */
  clientId: string | undefined;
  draft: PlanDraft;
  /** The procedure as it is planned, which need not be offered any more. */
  present?: { id: string; name: string };
  start: WrittenStudioTime;
  startLabel: string;
  /** What was wrong with the time. */
  startFault: string | undefined;
  isNew: boolean;
  problem: ServiceProblem | undefined;
  onChange: (draft: PlanDraft) => void;
}) {
  const texts = useTexts();
  const people = usePeople(studioId);
  const procedures = useProcedures(studioId);
  const artists = (people.answer ?? []).filter((person) => person.id === draft.artistId || treats(person));
  const offered = procedures.answer ?? [];
  const isGone = present !== undefined && !offered.some(({ id }) => id === present.id);
  return (
    <>
      <ProblemNote problem={people.problem ?? procedures.problem} />
      {procedures.answer?.length === 0 && <p>{texts.plan.noProcedures}</p>}
      <StudioTimeField label={startLabel} time={start} error={startFault} />
      <Choice
        label={texts.plan.procedure}
        required
        value={draft.procedureId}
        none={texts.plan.choose}
        error={problem?.faultOf('procedureId')}
        choices={(isGone ? [present, ...offered] : offered).map(({ id, name }) => ({
          value: id,
          label: name,
        }))}
        onChange={(procedureId) => onChange({ ...draft, procedureId })}
      />
      <Choice
        label={texts.plan.visitKind}
        required
        value={draft.visitKind}
        none={texts.plan.choose}
        error={problem?.faultOf('visitKind')}
        choices={visitKinds.map((kind) => ({ value: kind, label: texts.visitKinds[kind] }))}
        onChange={(visitKind) => onChange({ ...draft, visitKind })}
      />
      <Choice
        label={texts.plan.artist}
        required
        value={draft.artistId}
        none={texts.plan.choose}
        error={problem?.faultOf('artistId')}
        choices={artists.map(({ id, name }) => ({ value: id, label: name ?? texts.records.unknownPerson }))}
        onChange={(artistId) => onChange({ ...draft, artistId })}
      />
      {clientId !== undefined && (
        <FollowedChoice
          studioId={studioId}
          clientId={clientId}
          timeZone={start.timeZone}
          draft={draft}
          isNew={isNew}
          error={problem?.faultOf('followsSessionId')}
          onChange={onChange}
        />
      )}
      <Choice
        label={texts.plan.bodyPlace}
        value={draft.bodyPlace}
        {...(isNew && { none: texts.plan.bodyPlaceOfProcedure })}
        choices={bodyPlaces.map((place) => ({ value: place, label: texts.records.bodyPlaces[place] }))}
        onChange={(bodyPlace) => onChange({ ...draft, bodyPlace })}
      />
      <TextInput
        label={texts.plan.bodyPlaceDetail}
        description={texts.plan.bodyPlaceDetailHint}
        autoComplete="off"
        maxLength={200}
        value={draft.bodyPlaceDetail}
        error={problem?.faultOf('bodyPlaceDetail')}
        onChange={(event) => onChange({ ...draft, bodyPlaceDetail: event.currentTarget.value })}
      />
    </>
  );
}

/** Only what took place can be followed. Nobody comes so often. */
const mostFollowed = 200;

function FollowedChoice({
  studioId,
  clientId,
  timeZone,
  draft,
  isNew,
  error,
  onChange,
}: {
  studioId: string;
  clientId: string;
  timeZone: string;
  draft: PlanDraft;
  isNew: boolean;
  error: string | undefined;
  onChange: (draft: PlanDraft) => void;
}) {
  const texts = useTexts();
  const earlier = useAnswer(['completed sessions', studioId, clientId], () =>
    listSessions(studioId, { clientId, state: 'completed' }, undefined, mostFollowed),
  );
  const choices = [...(earlier.answer?.items ?? [])].reverse().map((session) => {
    const at = session.completedAt ?? session.plannedStart;
    const day = at === null ? '' : writtenDay(localDay(at, timeZone), texts.language);
    return {
      value: session.id,
      label: texts.plan.followed(day, session.procedureName, texts.visitKinds[session.visitKind]),
    };
  });
  if (choices.length === 0) return null;
  return (
    <Choice
      label={texts.plan.follows}
      description={texts.plan.followsHint}
      value={draft.follows}
      none={isNew ? texts.plan.followsItself : texts.plan.followsKept}
      error={error}
      choices={[...(isNew ? [] : [{ value: 'none', label: texts.plan.followsNone }]), ...choices]}
      onChange={(follows) => onChange({ ...draft, follows })}
    />
  );
}
