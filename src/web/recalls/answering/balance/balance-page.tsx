import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import type { BalanceTotalsView } from '../../../../recalls/balance/recall-balance.views.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import { PagedEntries } from '../../../frame/paged-entries.js';
import { Section } from '../../../frame/section.js';
import { useAnswer } from '../../../service/use-answer.js';
import { usePages } from '../../../service/use-pages.js';
import { writtenAmount } from '../../../stock/amounts.js';
import { Figures } from '../../../stock/figures.js';
import { useTexts } from '../../../texts/texts.js';
import { RecallFrame } from '../../recall-frame.js';
import { showBalance } from './balance.requests.js';
import { LotAccount } from './lot-account.js';

/** What came in of a recall's lots, what became of it, and what nobody can account for. */
export function BalancePage({ standing, id }: { standing: StandingView; id: string }) {
  return (
    <RecallFrame standing={standing} recallId={id} part="balance">
      {(recall) => <Balance studioId={standing.studioId} recall={recall} />}
    </RecallFrame>
  );
}

function Balance({ studioId, recall }: { studioId: string; recall: RecallView }) {
  const texts = useTexts();
  const words = texts.recallBalance;
  const { answer } = useAnswer(['balance of recall', studioId, recall.id], () =>
    showBalance(studioId, recall.id, undefined),
  );
  const list = usePages(['lots of balance', studioId, recall.id], (after) =>
    showBalance(studioId, recall.id, after),
  );
  return (
    <>
      <Section title={words.totals} hint={words.totalsHint}>
        {answer && <Totals totals={answer.totals} />}
      </Section>
      {answer && answer.blendTotals.lots > 0 && (
        <Section title={words.blends}>
          <Totals totals={answer.blendTotals} />
        </Section>
      )}
      <Section title={words.lots} hint={words.lotsHint}>
        <PagedEntries
          label={words.lots}
          list={list}
          none={words.none}
          entry={(lot) => <LotAccount key={lot.lotId} studioId={studioId} recallId={recall.id} lot={lot} />}
        />
      </Section>
    </>
  );
}

function Totals({ totals }: { totals: BalanceTotalsView }) {
  const texts = useTexts();
  const words = texts.recallBalance;
  return (
    <Figures
      figures={[
        ...(totals.balancedPercent === null
          ? []
          : [{ name: words.figures.balanced, value: words.percent(totals.balancedPercent), isMain: true }]),
        { name: words.figures.cameIn, value: writtenAmount(totals.cameIn, texts) },
        { name: words.figures.found, value: writtenAmount(totals.found, texts) },
        { name: words.figures.notAccounted, value: writtenAmount(totals.notAccounted, texts) },
      ]}
    />
  );
}
