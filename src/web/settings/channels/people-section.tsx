import type { ToldPersonView } from '../../../alerts/preferences/alert-preferences.views.js';
import { Entries } from '../../frame/entries.js';
import { Note } from '../../frame/note.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import type { ServiceProblem } from '../../service/problem.js';
import { usePeople } from '../../service/studio-answers.js';
import { useTexts } from '../../texts/texts.js';
import type { DestinationsSeen } from '../../told/use-destinations.js';
import { ToldPersonEntry } from './told-person-entry.js';

/** Who works here, how each is told, and their addresses. */
export function PeopleSection({
  studioId,
  told,
  problem,
  destinations,
  onChanged,
}: {
  studioId: string;
  told: readonly ToldPersonView[] | undefined;
  problem: ServiceProblem | undefined;
  destinations: DestinationsSeen;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.channels;
  const { answer: people, problem: peopleProblem } = usePeople(studioId);
  const { answer } = destinations;
  const waitsBecause = answer?.mailServerSet === false ? texts.told.noMailServer : undefined;
  return (
    <Section title={words.staff} hint={words.staffHint}>
      <ProblemNote problem={problem ?? peopleProblem} />
      {!(told && people) && !problem && !peopleProblem && <p role="status">{texts.app.loading}</p>}
      {waitsBecause !== undefined && (
        <Note kind="plain">
          <p>{waitsBecause}</p>
        </Note>
      )}
      {told && people && (
        <Entries label={words.staff}>
          {told.map((person) => (
            <ToldPersonEntry
              key={person.personId}
              studioId={studioId}
              person={person}
              name={people.find(({ id }) => id === person.personId)?.name ?? ''}
              destinations={(answer?.items ?? []).filter(
                ({ personId, state }) => personId === person.personId && state !== 'stopped',
              )}
              waitsBecause={waitsBecause}
              onChanged={onChanged}
            />
          ))}
        </Entries>
      )}
    </Section>
  );
}
