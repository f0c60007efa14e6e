import type { RecallView } from '../../../../recalls/recalls.views.js';
import { ProblemNote } from '../../../frame/problem-note.js';
import { Section } from '../../../frame/section.js';
import { useStudioInstants } from '../../../frame/use-studio-instants.js';
import { usePeople } from '../../../service/studio-answers.js';
import { useTexts } from '../../../texts/texts.js';
import { Score } from '../../drills/score.js';
import { useReport } from './closing.requests.js';

/** How it ended: when, who signed, and what was overridden. */
export function ClosedSection({ studioId, recall }: { studioId: string; recall: RecallView }) {
  const texts = useTexts();
  const words = texts.recallClosing;
  const when = useStudioInstants(studioId);
  const people = usePeople(studioId).answer;
  const { answer, problem } = useReport(studioId, recall.id);
  const closing = answer?.closing;
  const nameOf = (id: string) =>
    people?.find((person) => person.id === id)?.name ?? texts.records.unknownPerson;
  return (
    <Section title={words.closed[recall.state]} hint={words.closedHint}>
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {closing && (
        <>
          <p>
            {[
              when(closing.at),
              ...(closing.signedBy === null ? [] : [words.signedBy(nameOf(closing.signedBy))]),
              ...(closing.secondSignedBy === null ? [] : [words.secondBy(nameOf(closing.secondSignedBy))]),
            ].join(', ')}
          </p>
          {closing.reason !== null && <p>{closing.reason}</p>}
          {closing.overrides.map(({ obstacle, reason }) => (
            <p key={obstacle}>{words.overridden(words.obstacleNames[obstacle], reason)}</p>
          ))}
        </>
      )}
      {answer?.score && <Score score={answer.score} />}
      {recall.kind === 'recall' && recall.state === 'closed' && <p>{words.holdsStay}</p>}
    </Section>
  );
}
