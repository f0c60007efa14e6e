import { useSearchParams } from 'react-router';
import type { AlertView } from '../../../alerts/alerts.views.js';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Page } from '../../frame/page.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { Section } from '../../frame/section.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { type AlertFilters as Filters, listAlertPage } from '../alerts.requests.js';
import { choiceOf, filtersOf, searchOf, severities } from './alert-choice.js';
import { AlertFilters } from './alert-filters.js';
import { ListedAlert } from './listed-alert.js';
import { NotSentNote } from './not-sent-note.js';

/** What has to be seen to, and what had to be. What it is narrowed by stands in the address. */
export function AlertsPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.alertPages;
  const [search, setSearch] = useSearchParams();
  const choice = choiceOf(search);
  const filters = filtersOf(choice);
  const chosen = choice.severity === null ? severities : [choice.severity];
  return (
    <Page above={standing.studioName} title={words.title} lead={words.lead}>
      <AlertFilters
        key={search.toString()}
        choice={choice}
        onShow={(changed) => setSearch(searchOf(changed))}
      />
      <NotSentNote studioId={standing.studioId} />
      {choice.order === 'latest' ? (
        <Section title={words.orders.latest}>
          <AlertList standing={standing} label={words.title} filters={filters} none={words.noneFound} />
        </Section>
      ) : (
        chosen.map((severity) => (
          <OfSeverity key={severity} standing={standing} severity={severity} filters={filters} />
        ))
      )}
    </Page>
  );
}

/** Each severity is a list of its own, so that the worst stand first however many there are. */
function OfSeverity({
  standing,
  severity,
  filters,
}: {
  standing: StandingView;
  severity: AlertView['severity'];
  filters: Filters;
}) {
  const words = useTexts().alertPages;
  return (
    <Section title={words.parts[severity]} hint={words.partHints[severity]}>
      <AlertList
        standing={standing}
        label={words.parts[severity]}
        filters={{ ...filters, severity }}
        none={words.noneOfSeverity}
      />
    </Section>
  );
}

function AlertList({
  standing,
  label,
  filters,
  none,
}: {
  standing: StandingView;
  label: string;
  filters: Filters;
  none: string;
}) {
  const { studioId } = standing;
  const list = usePages(['alerts', studioId, JSON.stringify(filters)], (after) =>
    listAlertPage(studioId, filters, after),
  );
  return (
    <PagedEntries
      label={label}
      list={list}
      none={none}
      entry={(alert) => <ListedAlert key={alert.id} standing={standing} alert={alert} />}
    />
  );
}
