import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../../frame/navigation.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { writtenFacts } from '../../today/alert-facts.js';
import { askAlert } from '../alerts.requests.js';
import { AnswerSection } from './answer-section.js';
import { DeliveriesSection } from './deliveries-section.js';
import { FactsSection } from './facts-section.js';
import { HistorySection } from './history-section.js';

/** One alert: what is wrong, what to do next, what was done about it, and who was told. */
export function AlertPage({ standing, id }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const words = texts.alertPages.one;
  const { studioId, studioName, permissions } = standing;
  const { answer, problem } = useAnswer(['alerts', studioId, id], () => askAlert(studioId, id));
  if (!answer) {
    return (
      <Page above={studioName} title={problem?.code === 'not-found' ? words.gone : texts.alertPages.title}>
        <ProblemNote problem={problem} />
        {problem === undefined && <p role="status">{texts.app.loading}</p>}
        <ToAll studioId={studioId} />
      </Page>
    );
  }
  const { alert } = answer;
  const name = texts.alerts.kinds[alert.kind] ?? alert.kind;
  // What it is about comes first; a page's title keeps to that.
  const [about] = writtenFacts(alert.facts, texts, () => '');
  return (
    <Page above={studioName} title={name} {...(about !== undefined && { lead: about })}>
      <ProblemNote problem={problem} />
      <FactsSection standing={standing} alert={alert} />
      {permissions.includes('answer alerts') && <AnswerSection standing={standing} alert={alert} />}
      <HistorySection standing={standing} answer={answer} />
      <DeliveriesSection standing={standing} alertId={alert.id} />
      <ToAll studioId={studioId} />
    </Page>
  );
}

function ToAll({ studioId }: { studioId: string }) {
  const texts = useTexts();
  return (
    <p>
      <PageLink to={pathOf({ studioId, area: 'alerts' }, 'all')} alone>
        {texts.alertPages.one.toAll}
      </PageLink>
    </p>
  );
}
