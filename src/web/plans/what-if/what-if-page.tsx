import { useNavigate, useSearchParams } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Page } from '../../frame/page.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import { PlanRunEntry } from '../plan-run-entry.js';
import { useLatestPlan, usePlanLine, usePlans } from '../plans.requests.js';
import { SupposedPart } from './supposed-part.js';
import { WhatIfForm } from './what-if-form.js';

/** Asks what a plan would be if something were different, and shows what was asked before. */
export function WhatIfPage({ standing }: { standing: StandingView }) {
  const texts = useTexts();
  const words = texts.whatIf;
  const { studioId, studioName, permissions } = standing;
  const [parameters] = useSearchParams();
  const latest = useLatestPlan(studioId);
  const list = usePlans(studioId, 'what if');
  const [planId, line] = [parameters.get('plan'), Number(parameters.get('line'))];
  return (
    <Page above={studioName} title={words.title} lead={words.lead}>
      <ProblemNote problem={latest.problem} />
      {permissions.includes('plan orders') && latest.answer === null && <p>{words.planFirst}</p>}
      {permissions.includes('plan orders') &&
        latest.answer &&
        (planId !== null && Number.isInteger(line) && line > 0 ? (
          <OfOneItem standing={standing} planId={planId} lineNumber={line} />
        ) : (
          <AskSection standing={standing} item={undefined} />
        ))}
      <Section title={words.earlier} hint={texts.plans.earlierHint}>
        <PagedEntries
          label={words.earlier}
          list={list}
          none={words.none}
          entry={(plan) => (
            <PlanRunEntry
              key={plan.id}
              studioId={studioId}
              plan={plan}
              path={pathOf({ studioId, area: 'ordering' }, 'what-if', plan.id)}
            >
              <SupposedPart studioId={studioId} whatIf={plan.whatIf} label={undefined} />
            </PlanRunEntry>
          )}
        />
      </Section>
    </Page>
  );
}

function OfOneItem({
  standing,
  planId,
  lineNumber,
}: {
  standing: StandingView;
  planId: string;
  lineNumber: number;
}) {
  const { answer: line, problem } = usePlanLine(standing.studioId, planId, lineNumber);
  return (
    <>
      <ProblemNote problem={problem} />
      {line && <AskSection standing={standing} item={line.item} />}
    </>
  );
}

function AskSection({
  standing: { studioId },
  item,
}: {
  standing: StandingView;
  item: { kind: 'product' | 'configuration'; key: string; label: string } | undefined;
}) {
  const words = useTexts().whatIf;
  const open = useNavigate();
  return (
    <Section title={item === undefined ? words.ofAll : words.ofItem(item.label)} hint={words.askHint}>
      <WhatIfForm
        studioId={studioId}
        item={item}
        onAsked={(id) => void open(pathOf({ studioId, area: 'ordering' }, 'what-if', id))}
      />
    </Section>
  );
}
