import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { RecallSummaryView } from '../../recalls/recalls.views.js';
import { Entry } from '../frame/entries.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { Sign } from '../stock/sign.js';
import { useTexts } from '../texts/texts.js';
import { useReadiness } from './recalls.requests.js';

/** A recall in a list: since when, and what it still asks for. */
export function RecallEntry({
  standing: { studioId },
  recall,
}: {
  standing: StandingView;
  recall: RecallSummaryView;
}) {
  const texts = useTexts();
  const words = texts.recalls;
  const when = useStudioInstants(studioId);
  const { kind, title, state, chainWide, openedAt, endedAt } = recall;
  return (
    <Entry
      name={
        <PageLink alone to={pathOf({ studioId, area: 'recalls' }, recall.id)}>
          {title}
        </PageLink>
      }
      mark={kind === 'drill' ? words.drill : state === 'open' ? undefined : words.states[state]}
    >
      <p>
        {[
          endedAt === null ? words.since(when(openedAt)) : words.from(when(openedAt), when(endedAt)),
          words.affected(recall.affectedLots),
          ...(chainWide ? [words.ofChain] : []),
        ].join(', ')}
      </p>
      {state === 'open' && <Outstanding studioId={studioId} recall={recall} />}
    </Entry>
  );
}

function Outstanding({ studioId, recall }: { studioId: string; recall: RecallSummaryView }) {
  const words = useTexts().recalls.outstanding;
  const { answer: readiness } = useReadiness(studioId, recall.id);
  const { undecidedLots } = recall;
  const { containers, clients } = readiness?.figures ?? {};
  const toFind = containers ? containers.toFind - containers.found : 0;
  // In a drill nobody is told.
  const toTell = clients && recall.kind === 'recall' ? clients.notTried + clients.triedInVain : 0;
  return (
    <p>
      {undecidedLots > 0 && <Sign standing="care">{words.undecided(undecidedLots)}</Sign>}
      {toFind > 0 && <Sign standing="fault">{words.toFind(toFind)}</Sign>}
      {toTell > 0 && <Sign standing="fault">{words.toTell(toTell)}</Sign>}
      {readiness && undecidedLots + toFind + toTell === 0 && readiness.ready && (
        <Sign standing="good">{words.nothing}</Sign>
      )}
    </p>
  );
}
