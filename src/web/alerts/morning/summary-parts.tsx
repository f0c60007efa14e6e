import type { SummaryLineView, SummaryPartView } from '../../../alerts/summaries/morning-summaries.views.js';
import { Entries, Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { useTexts } from '../../texts/texts.js';
import { writtenFacts } from '../../today/alert-facts.js';
import styles from './summary-parts.module.css';

/** What a morning says, part by part; each line leads to its alert. */
export function SummaryParts({
  studioId,
  day,
  parts,
}: {
  studioId: string;
  /** Of which morning: it tells equal headings apart. */
  day: string;
  parts: readonly SummaryPartView[];
}) {
  const words = useTexts().alertPages.morning;
  if (parts.length === 0) return <p>{words.nothing}</p>;
  return parts.map(({ name, lines, more }) => (
    <div key={name} className={styles.part}>
      <h3 className={styles.name}>{words.parts[name]}</h3>
      <Entries label={`${words.parts[name]}, ${day}`}>
        {lines.map((line) => (
          <Line key={line.alertId} studioId={studioId} line={line} />
        ))}
      </Entries>
      {more > 0 && <p>{words.leftOut(more)}</p>}
    </div>
  ));
}

function Line({ studioId, line }: { studioId: string; line: SummaryLineView }) {
  const texts = useTexts();
  const facts = writtenFacts(line.facts, texts, useStudioInstants(studioId));
  const name = texts.alerts.kinds[line.kind] ?? line.kind;
  return (
    <Entry
      name={
        <PageLink
          to={pathOf({ studioId, area: 'alerts' }, line.alertId)}
          alone
          aria-label={texts.alertPages.details(name, facts[0] ?? '')}
        >
          {name}
        </PageLink>
      }
      mark={texts.alerts.severities[line.severity]}
    >
      <p>{facts.join(', ')}</p>
    </Entry>
  );
}
