import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { RecallView } from '../../../recalls/recalls.views.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { type Figure, Figures } from '../../stock/figures.js';
import { useTexts } from '../../texts/texts.js';
import { useReadiness } from '../recalls.requests.js';

/** How far the answer has come, in numbers. */
export function NumbersPart({
  standing: { studioId },
  recall,
}: {
  standing: StandingView;
  recall: RecallView;
}) {
  const texts = useTexts();
  const words = texts.recallOverview;
  const { answer: readiness, problem } = useReadiness(studioId, recall.id);
  const lots: Figure[] = [
    { name: words.figures.affected, value: recall.affectedLots, isMain: true },
    { name: words.figures.undecided, value: recall.undecidedLots },
  ];
  const { containers, clients, balance } = readiness?.figures ?? {};
  const settled = clients ? clients.reached + clients.refused + clients.unreachable : 0;
  return (
    <Section title={words.numbers} hint={words.numbersHint}>
      <ProblemNote problem={problem} />
      <Figures
        figures={[
          ...lots,
          ...(containers
            ? [{ name: words.figures.found, value: words.of(containers.found, containers.toFind) }]
            : []),
          ...(clients && recall.kind === 'recall'
            ? [{ name: words.figures.told, value: words.of(settled, clients.exposed) }]
            : []),
          ...(balance ? [{ name: words.figures.unexplained, value: balance.unexplainedPieces }] : []),
        ]}
      />
    </Section>
  );
}
