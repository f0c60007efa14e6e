import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { GuardedPage } from '../../frame/guarded-page.js';
import { NoSuchPage } from '../../frame/no-such-page.js';
import { Note } from '../../frame/note.js';
import { Page } from '../../frame/page.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { useWaiting } from '../../offline/use-waiting.js';
import { isProblem } from '../../service/problem.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { listSessionsInSetup } from '../../today/sessions.requests.js';
import { showTray } from '../tray.requests.js';
import { useMixes } from '../use-mixes.js';
import { writtenAmount } from '../written-amounts.js';
import { Completed } from './completed.js';
import { CompletionForm } from './completion-form.js';
import { useCompletion } from './use-completion.js';

/**
 * Where a session is finished, gloves off: everything is filled in as it most likely was, so that only what differs has to
 * be said.
 */
export function CompletionPage({ standing, sessionId }: { standing: StandingView; sessionId: string }) {
  return (
    <GuardedPage standing={standing} needs="work the tray">
      <Finish standing={standing} sessionId={sessionId} />
    </GuardedPage>
  );
}

function Finish({ standing, sessionId }: { standing: StandingView; sessionId: string }) {
  const texts = useTexts();
  const { studioId, studioName, personId } = standing;
  const whose = { studioId, sessionId, personId };
  const tray = useAnswer(['tray', studioId, sessionId], () => showTray(studioId, sessionId));
  const inSetup = useAnswer(['sessions in setup', studioId], () => listSessionsInSetup(studioId));
  const session = inSetup.answer?.find(({ id }) => id === sessionId);
  const lines = tray.answer?.lines.filter((line) => line.state === 'on tray') ?? [];
  const mixes = useMixes(whose, undefined, () => '');
  // What was scanned and pressed before has to arrive first.
  const scans = useWaiting('scan', whose, () => {
    void tray.reload();
    return false;
  });
  const takenOff = useWaiting('take off', whose, () => void tray.reload());
  const mixedOf = (containerId: string) =>
    (mixes.mixes ?? []).flatMap((mix) =>
      mix.parts
        .filter((part) => part.containerId === containerId && part.drops !== 0)
        .map((part) => texts.completion.inMix(writtenAmount(part, texts), mix.label)),
    );
  const mixedIds = new Set(
    lines.map(({ containerId }) => containerId).filter((id) => mixedOf(id).length > 0),
  );
  const completion = useCompletion(whose, lines, mixedIds, tray.reload);

  if (isProblem(tray.problem, 'not-found')) return <NoSuchPage />;
  const state = tray.answer?.state;
  return (
    <Page
      above={studioName}
      title={state === 'completed' ? texts.completion.doneTitle : texts.completion.title}
      lead={session ? texts.tray.of(session.clientReference, session.procedureName) : texts.completion.lead}
    >
      <ProblemNote problem={tray.problem ?? scans.problem ?? takenOff.problem ?? mixes.problem} />
      {tray.answer === undefined && tray.problem === undefined && <p role="status">{texts.app.loading}</p>}
      {tray.answer && state === 'completed' && (
        <Completed
          standing={standing}
          sessionId={sessionId}
          lines={tray.answer.lines}
          besides={completion.bookedBesides}
        />
      )}
      {state !== undefined && state !== 'completed' && state !== 'in setup' && (
        <Note kind="plain">
          <p>{texts.tray.notInSetup(texts.sessionStates[state])}</p>
        </Note>
      )}
      {state === 'in setup' && mixes.mixes && (
        <CompletionForm
          whose={whose}
          lines={lines}
          mixedOf={mixedOf}
          completion={completion}
          waiting={scans.waiting.length + takenOff.waiting.length + mixes.waiting}
          onSendAgain={scans.sendAgain}
        />
      )}
    </Page>
  );
}
