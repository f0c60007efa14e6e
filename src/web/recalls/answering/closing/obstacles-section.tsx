import type { ReactNode } from 'react';
import type { ObstacleView } from '../../../../recalls/closing/closing.views.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import type { ClosingObstacle } from '../../../../recalls/vocabulary.js';
import { Entries, Entry } from '../../../frame/entries.js';
import { PageLink } from '../../../frame/navigation.js';
import { pathOf } from '../../../frame/places.js';
import { ProblemNote } from '../../../frame/problem-note.js';
import { Section } from '../../../frame/section.js';
import { Sign } from '../../../stock/sign.js';
import { useTexts } from '../../../texts/texts.js';
import { partOfObstacle } from '../../recall-parts.js';
import { useReadiness } from '../../recalls.requests.js';

/** What stands against closing, each with the way to where it is mended. */
export function ObstaclesSection({
  studioId,
  recall,
  override,
}: {
  studioId: string;
  recall: RecallView;
  /** What stands below an obstacle, to close all the same; left out: nobody here closes. */
  override?: (obstacle: ClosingObstacle) => ReactNode;
}) {
  const texts = useTexts();
  const words = texts.recallClosing;
  const { answer, problem } = useReadiness(studioId, recall.id);
  return (
    <Section title={words.obstacles} hint={words.obstaclesHint[recall.kind]}>
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer?.obstacles.length === 0 && (
        <p>
          <Sign standing="good">{words.ready}</Sign>
        </p>
      )}
      {answer !== undefined && answer.obstacles.length > 0 && (
        <Entries label={words.obstacles}>
          {answer.obstacles.map((view) => (
            <ObstacleEntry
              key={view.obstacle}
              studioId={studioId}
              recallId={recall.id}
              view={view}
              below={override?.(view.obstacle)}
            />
          ))}
        </Entries>
      )}
    </Section>
  );
}

function ObstacleEntry({
  studioId,
  recallId,
  view: { obstacle, count, of, counts },
  below,
}: {
  studioId: string;
  recallId: string;
  view: ObstacleView;
  below: ReactNode;
}) {
  const texts = useTexts();
  const words = texts.recallClosing;
  const part = partOfObstacle[obstacle];
  const area = { studioId, area: 'recalls' } as const;
  const ofThese = counts.flatMap(({ what, count: number }) => {
    const said = number === 0 ? undefined : words.counts[what]?.(number);
    return said === undefined ? [] : [said];
  });
  return (
    <Entry
      name={<Sign standing="care">{texts.closingObstacles[obstacle](count)}</Sign>}
      {...(below !== undefined && { below })}
    >
      <p>{[words.of[obstacle](of), ...ofThese].join(', ')}</p>
      <p>
        <PageLink alone to={part === 'overview' ? pathOf(area, recallId) : pathOf(area, recallId, part)}>
          {words.mend[obstacle]}
        </PageLink>
      </p>
    </Entry>
  );
}
