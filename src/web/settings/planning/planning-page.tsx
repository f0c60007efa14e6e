import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Facts } from '../../frame/facts.js';
import { Page } from '../../frame/page.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { ArtistsPart } from './artists-part.js';
import { ItemsPart } from './items-part.js';
import { showPlanning } from './planning.requests.js';
import { StudioPlanningForm } from './studio-planning-form.js';
import { writtenSetting } from './written-setting.js';

/** What the form says of each by itself. */
const settings = [
  'serviceTargetPerMille',
  'orderCostMinor',
  'holdingPerYearPerMille',
  'returnPerMille',
] as const;

/** How plans weigh what is needed against what it costs. */
export function PlanningPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.planning;
  const { studioId, studioName } = standing;
  const { answer, problem, reload } = useAnswer(['planning settings', studioId], () =>
    showPlanning(studioId),
  );
  const further = answer?.assumptions.filter(({ code }) => !settings.some((name) => name === code)) ?? [];
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.studio} hint={words.studioHint}>
        <ProblemNote problem={problem} />
        {!answer && !problem && <p role="status">{texts.app.loading}</p>}
        {answer && <StudioPlanningForm studioId={studioId} settings={answer} reload={reload} />}
      </Section>
      {answer && (
        <Section title={words.further} hint={words.furtherHint}>
          <Facts
            facts={further.map((assumption) => [
              words.names[assumption.code],
              `${writtenSetting(assumption, answer.currency, texts)} (${words.bases[assumption.basis]})`,
            ])}
          />
        </Section>
      )}
      {answer && <ItemsPart studioId={studioId} currency={answer.currency} />}
      <ArtistsPart studioId={studioId} />
    </Page>
  );
}
