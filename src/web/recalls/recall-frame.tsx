import type { ReactNode } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import type { RecallView } from '../../recalls/recalls.views.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { Note } from '../frame/note.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { useStudioInstants } from '../frame/use-studio-instants.js';
import { isProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import { PartsOfRecall } from './parts-of-recall.js';
import type { RecallPart } from './recall-parts.js';
import { useRecall } from './recalls.requests.js';

/** What stands around every page of one recall: what it is called, how it stands, and the parts of the answer to it. */
export function RecallFrame({
  standing,
  recallId,
  part,
  children,
}: {
  standing: StandingView;
  recallId: string;
  /** The page that is shown; left out: one that is no part of its own. */
  part?: RecallPart;
  children: (recall: RecallView, reload: () => Promise<void>) => ReactNode;
}) {
  const texts = useTexts();
  const words = texts.recalls;
  const { studioId, studioName } = standing;
  const { answer: recall, problem, reload } = useRecall(studioId, recallId);
  const when = useStudioInstants(studioId);
  if (isProblem(problem, 'not-found')) return <NoSuchPage />;
  return (
    <Page
      above={studioName}
      title={recall?.title ?? words.title}
      {...(recall && {
        lead: [
          recall.endedAt === null
            ? words.openSince(when(recall.openedAt))
            : words.overSince(words.states[recall.state], when(recall.endedAt)),
          ...(recall.chainWide ? [words.ofChain] : []),
        ].join(', '),
      })}
    >
      <ProblemNote problem={problem} />
      {!recall && !problem && <p role="status">{texts.app.loading}</p>}
      {recall && (
        <>
          {recall.kind === 'drill' && (
            <Note kind="plain">
              <p>{texts.drillBanner}</p>
            </Note>
          )}
          <PartsOfRecall standing={standing} recall={recall} part={part} />
          {children(recall, reload)}
        </>
      )}
    </Page>
  );
}
