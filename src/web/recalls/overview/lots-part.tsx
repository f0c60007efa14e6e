import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { RecallView } from '../../../recalls/recalls.views.js';
import { PagedEntries } from '../../frame/paged-entries.js';
import { Section } from '../../frame/section.js';
import { usePages } from '../../service/use-pages.js';
import { useTexts } from '../../texts/texts.js';
import { listRecallLots } from '../recalls.requests.js';
import { RecallLotEntry } from './recall-lot-entry.js';

/** The lots that are met; what waits for a decision comes first. */
export function LotsPart({ standing, recall }: { standing: StandingView; recall: RecallView }) {
  const texts = useTexts();
  const words = texts.recallOverview;
  const { studioId } = standing;
  const list = usePages(['lots of recall', studioId, recall.id, String(recall.scopeNumber)], (after) =>
    listRecallLots(studioId, recall.id, after),
  );
  return (
    <Section title={words.lots} hint={words.lotsHint}>
      <PagedEntries
        label={words.lots}
        list={list}
        none={words.noLots}
        entry={(lot) => <RecallLotEntry key={lot.lotId} standing={standing} recall={recall} lot={lot} />}
      />
    </Section>
  );
}
