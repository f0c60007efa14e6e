import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../../frame/navigation.js';
import { Page } from '../../frame/page.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { askSummaryNow } from '../alerts.requests.js';
import { EarlierMornings } from './earlier-mornings.js';
import { SummaryParts } from './summary-parts.js';

/** What the morning says to whoever looks: now, and on the mornings before. */
export function MorningPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.alertPages.morning;
  const { studioId, studioName } = standing;
  const when = useStudioInstants(studioId);
  const mayChoose = standing.permissions.includes('be told of alerts');
  const { answer, problem } = useAnswer(['alerts', studioId, 'morning'], () => askSummaryNow(studioId));
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <Section title={words.now} hint={words.nowHint}>
        <ProblemNote problem={problem} />
        {answer === undefined && problem === undefined && <p role="status">{texts.app.loading}</p>}
        {answer && <SummaryParts studioId={studioId} day={answer.day} parts={answer.parts} />}
        {answer && (
          <p>
            {answer.nextAt !== null && words.nextAt(when(answer.nextAt))}
            {answer.whyNone !== null && words.whyNone[answer.whyNone]}{' '}
            {mayChoose && <PageLink to={`/account/told/${studioId}`}>{words.choose}</PageLink>}
          </p>
        )}
      </Section>
      <EarlierMornings standing={standing} />
    </Page>
  );
}
