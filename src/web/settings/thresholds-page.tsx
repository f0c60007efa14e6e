import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Facts } from '../frame/facts.js';
import { PageLink } from '../frame/navigation.js';
import { Page } from '../frame/page.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { useStudio } from '../service/studio-answers.js';
import { useTexts } from '../texts/texts.js';
import { assumedLifeOf, writtenLife } from './assumed-life.js';
import { ThresholdsForm } from './thresholds-form.js';
import { WarningsSection } from './warnings/warnings-section.js';

/** From when on the studio is told of what ends or runs out. */
export function ThresholdsPage({ standing }: { standing: StandingView }) {
  const { studioId, studioName, permissions } = standing;
  const texts = useTexts();
  const words = texts.thresholds;
  const { answer: studio, problem, reload } = useStudio(studioId);
  const mayChange = permissions.includes('change the studio');
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.dates} hint={words.datesHint}>
        <ProblemNote problem={problem} />
        {!studio && !problem && <p role="status">{texts.app.loading}</p>}
        {studio &&
          (mayChange ? (
            <ThresholdsForm studio={studio} reload={reload} />
          ) : (
            <Facts
              facts={[
                [words.useByNear, words.days(studio.useByNearDays)],
                [words.openedLifeEnding, words.days(studio.openedLifeEndingDays)],
                [words.assumedLife, writtenLife(assumedLifeOf(studio.assumedOpenedLife), texts)],
                [words.morning, studio.morning],
              ]}
            />
          ))}
      </Section>
      <WarningsSection standing={standing} />
      <Section title={words.levels} hint={words.levelsHint}>
        <PageLink to={pathOf({ studioId, area: 'stock' }, 'levels')} alone>
          {words.toLevels}
        </PageLink>
      </Section>
    </Page>
  );
}
