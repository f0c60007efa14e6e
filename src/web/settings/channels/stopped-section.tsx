import { Entries } from '../../frame/entries.js';
import { Section } from '../../frame/section.js';
import { usePeople } from '../../service/studio-answers.js';
import { useTexts } from '../../texts/texts.js';
import { DestinationEntry } from '../../told/destination-entry.js';
import type { DestinationsSeen } from '../../told/use-destinations.js';

/** What nothing goes to any more, and why. Nothing is shown where there is nothing. */
export function StoppedSection({
  studioId,
  destinations: { answer, reload },
}: {
  studioId: string;
  destinations: DestinationsSeen;
}) {
  const words = useTexts().channels;
  const people = usePeople(studioId).answer;
  const stopped = answer?.items.filter(({ state }) => state === 'stopped') ?? [];
  if (stopped.length === 0) return null;
  return (
    <Section title={words.stopped} hint={words.stoppedHint}>
      <Entries label={words.stopped}>
        {stopped.map((destination) => {
          const owner = people?.find(({ id }) => id === destination.personId)?.name;
          return (
            <DestinationEntry
              key={destination.id}
              studioId={studioId}
              destination={destination}
              onChanged={reload}
            >
              <p>{[words.kinds[destination.kind], owner && words.whose(owner)].filter(Boolean).join(' ')}</p>
            </DestinationEntry>
          );
        })}
      </Entries>
    </Section>
  );
}
