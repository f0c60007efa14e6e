import { Button, Title } from '@mantine/core';
import { useMediaQuery } from '@mantine/hooks';
import { type ReactNode, useId } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { LotTraceView, TraceView } from '../../../sessions/trace.views.js';
import { MoreButton } from '../../frame/more-button.js';
import { PageLink } from '../../frame/navigation.js';
import { NoSuchPage } from '../../frame/no-such-page.js';
import { Page } from '../../frame/page.js';
import { pathOf } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { isProblem } from '../../service/problem.js';
import { saveFile } from '../../service/save-file.js';
import { useAction } from '../../service/use-action.js';
import { useAnswer } from '../../service/use-answer.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { nameOf } from '../amounts.js';
import { showLot } from '../lots/lots.requests.js';
import { showTrace, type TraceSource, traceAsCsv } from './trace.requests.js';
import styles from './trace-page.module.css';
import { TracePicture } from './trace-picture.js';
import { TraceTable } from './trace-table.js';

/** Who had a lot: every session and client it touched. */
export function LotTracePage({ standing, id }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  const { studioId } = standing;
  const lot = useAnswer(['lot of trace', studioId, id], () => showLot(studioId, id, { limit: 1 }));
  const saving = useAction(async () => saveFile(await traceAsCsv(studioId, id), `trace-${id}.csv`));
  const labels = new Map(lot.answer?.containers.map((one) => [one.id, one.labelCode]));
  return (
    <TracePage
      standing={standing}
      source={{ kind: 'lot', id }}
      title={texts.trace.titleOfLot}
      lead={
        lot.answer
          ? `${nameOf(lot.answer)}, ${lot.answer.code ?? texts.codeStates[lot.answer.codeState]}. ${texts.trace.lead}`
          : texts.trace.lead
      }
      labels={labels}
    >
      <div className={styles.ways}>
        <PageLink alone to={pathOf({ studioId, area: 'stock' }, 'lots', id)}>
          {texts.trace.toLot}
        </PageLink>
        <Button variant="default" loading={saving.busy} onClick={() => void saving.run()}>
          {texts.trace.csv}
        </Button>
      </div>
      <ProblemNote problem={saving.problem} />
    </TracePage>
  );
}

/** The way back: every lot that touched the client in one session. */
export function SessionTracePage({ standing, id }: { standing: StandingView; id: string }) {
  const texts = useTexts();
  return (
    <TracePage
      standing={standing}
      source={{ kind: 'session', id }}
      title={texts.trace.titleOfSession}
      lead={texts.trace.lead}
      labels={new Map()}
    >
      <div className={styles.ways}>
        <PageLink alone to={pathOf({ studioId: standing.studioId, area: 'records' }, 'sessions', id)}>
          {texts.trace.toSession}
        </PageLink>
      </div>
    </TracePage>
  );
}

function TracePage({
  standing: { studioId, studioName },
  source,
  title,
  lead,
  labels,
  children,
}: {
  standing: StandingView;
  source: TraceSource;
  title: string;
  lead: string;
  labels: ReadonlyMap<string, string>;
  children: ReactNode;
}) {
  const texts = useTexts();
  // A picture that has to be moved sideways is no first answer.
  const isNarrow = useMediaQuery('(max-width: 48em)', undefined, { getInitialValueInEffect: false });
  const whole = useAnswer(['trace totals', studioId, source.kind, source.id], () =>
    showTrace(studioId, source, undefined, 1),
  );
  const list = usePages(['trace', studioId, source.kind, source.id], (after) =>
    showTrace(studioId, source, after),
  );
  const problem = whole.problem ?? list.problem;
  if (isProblem(problem, 'not-found')) return <NoSuchPage />;
  const { items } = list;
  const table = items && (
    <Part key="table" title={texts.trace.uses} hint={texts.trace.usesHint}>
      <TraceTable studioId={studioId} uses={items} />
      <MoreButton list={list} />
    </Part>
  );
  const picture = items && whole.answer && (
    <Part key="picture" title={texts.trace.graph} hint={texts.trace.graphHint}>
      <TracePicture
        studioId={studioId}
        uses={items}
        allSessions={whole.answer.totals.sessions}
        labels={labels}
      />
    </Part>
  );
  return (
    <Page above={studioName} title={title} lead={lead}>
      <ProblemNote problem={problem} />
      {(!items || !whole.answer) && !problem && <p role="status">{texts.app.loading}</p>}
      {whole.answer && <Totals studioId={studioId} trace={whole.answer} />}
      {children}
      {items && items.length > 0 && (isNarrow ? [table, picture] : [picture, table])}
    </Page>
  );
}

function Totals({ studioId, trace }: { studioId: string; trace: TraceView | LotTraceView }) {
  const texts = useTexts();
  const { uses, reversedUses, sessions, clients } = trace.totals;
  const sisters = 'sisterLots' in trace ? trace.sisterLots : [];
  return (
    <>
      <p>{uses === 0 ? texts.trace.none : texts.trace.totals(uses, sessions, clients)}</p>
      {reversedUses > 0 && <p>{texts.trace.reversedUses(reversedUses)}</p>}
      {sisters.length > 0 && (
        <Part title={texts.trace.sisterLots} hint={texts.trace.sisterLotsHint}>
          <ul className={styles.sisters}>
            {sisters.map(({ lotId, useBy }) => (
              <li key={lotId}>
                <PageLink alone to={pathOf({ studioId, area: 'stock' }, 'lots', lotId, 'trace')}>
                  {useBy === null ? texts.lot.noUseBy : texts.lot.lastDay(writtenDay(useBy, texts.language))}
                </PageLink>
              </li>
            ))}
          </ul>
        </Part>
      )}
    </>
  );
}

/** A part of the page that takes the whole width. */
function Part({ title, hint, children }: { title: string; hint: string; children: ReactNode }) {
  const id = useId();
  return (
    <section className={styles.part} aria-labelledby={id}>
      <Title order={2} id={id}>
        {title}
      </Title>
      <p className={styles.hint}>{hint}</p>
      {children}
    </section>
  );
}
