import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { StudioProgressView } from '../../../recalls/chain/chain-progress.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { request } from '../../service/request.js';
import { useAnswer } from '../../service/use-answer.js';
import { useRequester } from '../../sign-in/requester.js';
import { Figures } from '../../stock/figures.js';
import { Sign } from '../../stock/sign.js';
import { useTexts } from '../../texts/texts.js';
import { RecallFrame } from '../recall-frame.js';

/** How far each studio of the chain has come, in numbers. */
export function StudiosPage({ standing, id }: { standing: StandingView; id: string }) {
  return (
    <RecallFrame standing={standing} recallId={id} part="studios">
      {() => <Studios studioId={standing.studioId} recallId={id} />}
    </RecallFrame>
  );
}

function Studios({ studioId, recallId }: { studioId: string; recallId: string }) {
  const texts = useTexts();
  const words = texts.chainRecall;
  const { answer, problem } = useAnswer(['studios of recall', studioId, recallId], () =>
    request('GET', '/studios/{studioId}/recalls/{recallId}/studios', { studioId, recallId }),
  );
  return (
    <Section title={words.title} hint={words.hint}>
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && (
        <Entries label={words.title}>
          {answer.studios.map((studio) => (
            <StudioEntry key={studio.studioId} studio={studio} recallId={recallId} />
          ))}
        </Entries>
      )}
    </Section>
  );
}

function StudioEntry({ studio, recallId }: { studio: StudioProgressView; recallId: string }) {
  const texts = useTexts();
  const words = texts.chainRecall;
  const { studios } = useRequester();
  const isOpenToThem = studios.some(({ studioId }) => studioId === studio.studioId);
  const percent = new Intl.NumberFormat(texts.language, { style: 'percent', maximumFractionDigits: 1 });
  const { of } = texts.recallOverview;
  const figures = texts.recallOverview.figures;
  return (
    <Entry
      name={
        isOpenToThem && studio.state !== null ? (
          <PageLink alone to={pathOf({ studioId: studio.studioId, area: 'recalls' }, recallId)}>
            {studio.studioName}
          </PageLink>
        ) : (
          studio.studioName
        )
      }
      mark={studio.state === null ? words.noPart : texts.recalls.states[studio.state]}
    >
      {studio.state !== null && (
        <>
          <Figures
            figures={[
              { name: figures.affected, value: studio.lotsAffected, isMain: true },
              { name: figures.undecided, value: studio.lotsUndecided },
              { name: figures.found, value: of(studio.containersFound, studio.containersToFind) },
              { name: figures.told, value: of(studio.clientsSettled, studio.clientsExposed) },
              ...(studio.balancedPercent === null
                ? []
                : [{ name: words.balanced, value: percent.format(studio.balancedPercent / 100) }]),
            ]}
          />
          {studio.state === 'open' && (
            <p>
              {studio.obstacles.length === 0 ? (
                <Sign standing="good">{texts.recalls.outstanding.nothing}</Sign>
              ) : (
                studio.obstacles.map(({ obstacle, count }) => (
                  <Sign key={obstacle} standing="care">
                    {texts.closingObstacles[obstacle](count)}
                  </Sign>
                ))
              )}
            </p>
          )}
        </>
      )}
    </Entry>
  );
}
