import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import { Link } from 'react-router';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { GuardedPage } from '../../frame/guarded-page.js';
import { NoSuchPage } from '../../frame/no-such-page.js';
import { Note } from '../../frame/note.js';
import { Page } from '../../frame/page.js';
import { pathOfTray } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useOutgoing } from '../../offline/outgoing.js';
import { useWaiting } from '../../offline/use-waiting.js';
import { Events } from '../../service/events.js';
import { isProblem } from '../../service/problem.js';
import { useAction } from '../../service/use-action.js';
import { useAnswer } from '../../service/use-answer.js';
import { useTexts } from '../../texts/texts.js';
import { listSessionsInSetup } from '../../today/sessions.requests.js';
import { forget, useKept } from '../kept.js';
import { complete, showTray } from '../tray.requests.js';
import { useMixes } from '../use-mixes.js';
import { writtenAmount } from '../written-amounts.js';
import { BesidesList } from './besides-list.js';
import { Completed } from './completed.js';
import { CompletedLine } from './completed-line.js';
import styles from './completion.module.css';
import { CompletionBar } from './completion-bar.js';
import {
  type Besides,
  type CompletionDraft,
  completionOf,
  outcomeOf,
  untouched,
} from './completion-draft.js';
import { SigningFields } from './signing-fields.js';
import { Wrappers } from './wrappers.js';

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
  const lines = tray.answer?.lines.filter(({ state }) => state === 'on tray') ?? [];
  const mixes = useMixes(whose, () => '');
  // What was scanned and pressed before has to arrive first.
  const scans = useWaiting('scan', whose, () => void tray.reload());
  const waiting = scans.waiting.length + mixes.waiting;
  /** Of others at this device, who have to be signed in for it to be sent. */
  const ofOthers = useOutgoing().waiting.filter(
    (write) => write.sessionId === sessionId && write.personId !== personId,
  ).length;
  const sendAgain = () => {
    scans.sendAgain();
    mixes.sendAgain();
  };
  const key = `completion of ${personId} ${studioId} ${sessionId}`;
  const [draft, setDraft] = useKept<CompletionDraft>(key, untouched);
  const [calledId, setCalledId] = useState<string>();
  const [bookedBesides, setBookedBesides] = useState<readonly Besides[]>([]);
  const field = useRef<HTMLInputElement>(null);
  const events = useRef(new Events()).current;

  const mixedOf = (containerId: string) =>
    (mixes.mixes ?? []).flatMap((mix) =>
      mix.parts
        .filter((part) => part.containerId === containerId && part.drops !== 0)
        .map((part) => texts.completion.inMix(writtenAmount(part, texts), mix.label)),
    );
  const mixedIds = new Set(
    lines.map(({ containerId }) => containerId).filter((id) => mixedOf(id).length > 0),
  );
  const completion = completionOf(draft, lines, mixedIds, personId);
  const completing = useAction(async () => {
    if (!completion) return;
    try {
      await complete(studioId, sessionId, { ...completion, ...events.of(completion) });
    } catch (error) {
      // What changed since, such as a hold, is shown at its line.
      await tray.reload();
      throw error;
    }
    setBookedBesides(draft.besides);
    forget(key);
    await tray.reload();
  });
  const faults = completing.problem?.document.lines ?? [];

  const change = (part: Partial<CompletionDraft>) => setDraft((before) => ({ ...before, ...part }));
  /** Of several alike, the first whose wrapper was not shown yet; false: there are more wrappers than pieces. */
  const showLines = (found: typeof lines): boolean => {
    const [first] = found;
    const line =
      found.find(({ id }) => !draft.wrappers.includes(id)) ??
      (first?.stockForm === 'container' ? first : undefined);
    if (!line) return false;
    setCalledId(line.id);
    setDraft((before) => ({
      ...before,
      wrappers: [...new Set([...before.wrappers, line.id])],
      // An opened wrapper went back unopened in no case; whether it was used is theirs to say.
      outcomes:
        outcomeOf(before, line, mixedIds) === 'back unopened'
          ? { ...before.outcomes, [line.id]: 'used' }
          : before.outcomes,
    }));
    return true;
  };
  const addBesides = (added: Besides) =>
    setDraft((before) => {
      const same = before.besides.find(({ containerId }) => containerId === added.containerId);
      const others = before.besides.filter((each) => each !== same);
      const amount = added.isCounted ? (same?.amount ?? 0) + added.amount : added.amount;
      return { ...before, besides: [...others, { ...added, amount }] };
    });

  if (isProblem(tray.problem, 'not-found')) return <NoSuchPage />;
  const state = tray.answer?.state;
  const undecided = lines.filter((line) => outcomeOf(draft, line, mixedIds) === null).length;
  return (
    <Page
      above={studioName}
      title={state === 'completed' ? texts.completion.doneTitle : texts.completion.title}
      lead={session ? texts.tray.of(session.clientReference, session.procedureName) : texts.completion.lead}
    >
      <ProblemNote problem={tray.problem ?? mixes.problem} />
      {tray.answer === undefined && tray.problem === undefined && <p>{texts.app.loading}</p>}
      {tray.answer && state === 'completed' && (
        <Completed
          standing={standing}
          sessionId={sessionId}
          lines={tray.answer.lines}
          besides={bookedBesides}
        />
      )}
      {state !== undefined && state !== 'completed' && state !== 'in setup' && (
        <Note kind="plain">
          <p>{texts.tray.notInSetup(texts.sessionStates[state])}</p>
        </Note>
      )}
      {state === 'in setup' && mixes.mixes && (
        <div className={styles.form}>
          <Button
            component={Link}
            to={pathOfTray({ studioId, sessionId })}
            size="xl"
            variant="default"
            className={styles.back ?? ''}
          >
            {texts.completion.backToTray}
          </Button>
          {waiting > 0 && (
            <Note kind="fault">
              <p>{texts.completion.waiting(waiting)}</p>
              <Button size="xl" variant="default" mt="sm" onClick={sendAgain}>
                {texts.tray.sendAgain}
              </Button>
            </Note>
          )}
          {ofOthers > 0 && (
            <Note kind="fault">
              <p>{texts.completion.ofOthers(ofOthers)}</p>
            </Note>
          )}
          <Section title={texts.completion.things} hint={texts.completion.thingsHint}>
            <div className={styles.lines}>
              {lines.length === 0 && draft.besides.length === 0 && <p>{texts.completion.nothing}</p>}
              {lines.map((line) => (
                <CompletedLine
                  key={line.id}
                  line={line}
                  outcome={outcomeOf(draft, line, mixedIds)}
                  mixed={mixedOf(line.containerId)}
                  drops={draft.drops[line.id] ?? 0}
                  reason={draft.reasons[line.id] ?? ''}
                  wrapperShown={draft.wrappers.includes(line.id)}
                  isCalled={calledId === line.id}
                  fault={faults.find(({ lineId }) => lineId === line.id)?.message}
                  onOutcome={(outcome) => change({ outcomes: { ...draft.outcomes, [line.id]: outcome } })}
                  onDrops={(drops) => change({ drops: { ...draft.drops, [line.id]: drops } })}
                  onReason={(reason) => change({ reasons: { ...draft.reasons, [line.id]: reason } })}
                />
              ))}
              <BesidesList besides={draft.besides} onChange={(besides) => change({ besides })} />
            </div>
          </Section>
          <Section title={texts.completion.wrappers} hint={texts.completion.wrappersHint}>
            <Wrappers
              studioId={studioId}
              lines={lines}
              field={field}
              onLines={showLines}
              onBesides={addBesides}
            />
          </Section>
          <SigningFields studioId={studioId} personId={personId} draft={draft} onChange={change} />
          <ProblemNote problem={completing.problem} />
          <CompletionBar
            undecided={undecided}
            outcomes={lines.map((line) => outcomeOf(draft, line, mixedIds))}
            besides={draft.besides.length}
            busy={completing.busy}
            ready={completion !== undefined && waiting === 0}
            onComplete={() => void completing.run()}
          />
        </div>
      )}
    </Page>
  );
}
