import { Button } from '@mantine/core';
import { useCallback, useRef, useState } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { PageLink } from '../frame/navigation.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { Note } from '../frame/note.js';
import { Page } from '../frame/page.js';
import { pathOfTray } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { outgoing } from '../offline/outgoing.js';
import { Scanner } from '../scanner/scanner.js';
import { Events } from '../service/events.js';
import { isProblem } from '../service/problem.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { listSessionsInSetup } from '../today/sessions.requests.js';
import { laidThings } from './laid-things.js';
import { ScanField } from './scan-field.js';
import { TakeOver } from './take-over.js';
import { TrayBar } from './tray-bar.js';
import styles from './tray-page.module.css';
import { type TrayTab, TrayTabs } from './tray-tabs.js';
import { useMixes } from './use-mixes.js';
import { useScans } from './use-scans.js';
import { useTray } from './use-tray.js';
import { NoVerdict, VerdictPanel } from './verdict-panel.js';

/**
 * Where a tray is laid, on a device on a stand: whatever is shown to the camera, typed by a hand-held scanner or typed from
 * a label is judged at once, and the verdict is the main thing. Nothing has to be pressed between two scans.
 */
export function TrayPage({ standing, sessionId }: { standing: StandingView; sessionId: string }) {
  const texts = useTexts();
  const { studioId, studioName, personId, permissions } = standing;
  const whose = { studioId, sessionId, personId };
  const tray = useTray(standing, sessionId);
  const inSetup = useAnswer(['sessions in setup', studioId], () => listSessionsInSetup(studioId));
  const session = inSetup.answer?.find(({ id }) => id === sessionId);
  const called = session ?? tray.facts?.sessions.find(({ id }) => id === sessionId);
  const lines = tray.answer?.lines ?? [];
  const things = laidThings(lines);
  const mixes = useMixes(
    whose,
    tray.facts,
    (containerId) => lines.find((line) => line.containerId === containerId)?.label ?? '',
  );
  const { reload: reloadTray } = tray;
  const { reload: reloadMixes } = mixes;
  /** Another tablet may work at the same tray. */
  const reload = useCallback(async () => {
    await Promise.all([reloadTray(), reloadMixes()]);
  }, [reloadTray, reloadMixes]);
  const scans = useScans(whose, tray.facts, reload);
  const [tab, setTab] = useState<TrayTab>('tray');
  const [chosenMixId, chooseMix] = useState<string>();
  /** A container that was opened just now: it is not offered again. */
  const [openedId, setOpenedId] = useState<string>();
  const events = useRef(new Events()).current;
  const field = useRef<HTMLInputElement>(null);

  const opening = useAction(async (containerId: string) => {
    await outgoing.sendOrKeep({ ...events.of({ opened: containerId }), ...whose, kind: 'open', containerId });
    events.renew();
    setOpenedId(containerId);
  });
  const takingBack = useAction(async (lineId: string) => {
    await outgoing.sendOrKeep({ ...events.of({ off: lineId }), ...whose, kind: 'take off', lineId });
    events.renew();
  });

  if (isProblem(tray.problem, 'not-found')) return <NoSuchPage />;
  const works = permissions.includes('work the tray') && tray.answer?.state === 'in setup';
  const last = scans.last;
  const lastThing = things.find(({ containerId }) => containerId === last?.scan.thing?.containerId);
  const lastLineId = last?.scan.trayLineId ?? undefined;
  return (
    <Page
      above={studioName}
      title={texts.tray.title}
      {...(called && { lead: texts.tray.of(called.clientReference, called.procedureName) })}
    >
      <ProblemNote problem={tray.problem} />
      {tray.answer === undefined && tray.problem === undefined && <p role="status">{texts.app.loading}</p>}
      {tray.answer && tray.answer.state !== 'in setup' && (
        <Note kind="plain">
          <p>{texts.tray.notInSetup(texts.sessionStates[tray.answer.state])}</p>
          {tray.answer.state === 'completed' && (
            <PageLink to={`${pathOfTray({ studioId, sessionId })}/completion`} alone>
              {texts.completion.booked}
            </PageLink>
          )}
        </Note>
      )}
      <div className={styles.tray}>
        <div className={styles.look}>
          {works && (
            <Scanner
              field={field}
              scan={scans.last?.scan ?? null}
              onShown={(symbol) => scans.show({ symbol })}
            />
          )}
          {last ? (
            <VerdictPanel
              scan={last.scan}
              symbol={last.symbol}
              pieces={lastThing?.pieces ?? 0}
              openedId={openedId}
              busy={scans.busy || opening.busy || takingBack.busy}
              onShow={scans.show}
              onOpen={(containerId) => void opening.run(containerId)}
              onTakeOff={
                works && lastLineId !== undefined && lastThing?.lineIds.includes(lastLineId)
                  ? () => void takingBack.run(lastLineId)
                  : undefined
              }
            />
          ) : (
            works && <NoVerdict />
          )}
          <ProblemNote problem={scans.problem ?? opening.problem ?? takingBack.problem} />
          {last?.onDevice && (
            <Note kind="plain">
              <p>{texts.offline.judgedHere}</p>
            </Note>
          )}
          {scans.isUnknown && (
            <Note kind="fault">
              <p>{texts.offline.notKnownHere}</p>
            </Note>
          )}
          {scans.problem && scans.waiting > 0 && !scans.busy && (
            <Note kind="fault">
              <p>{texts.tray.waiting(scans.waiting)}</p>
              <Button size="xl" variant="default" mt="sm" onClick={scans.sendAgain}>
                {texts.tray.sendAgain}
              </Button>
            </Note>
          )}
          {works && <ScanField field={field} onShown={(symbol) => scans.show({ symbol })} />}
        </div>
        {tray.answer && (
          <TrayTabs
            whose={whose}
            session={session}
            things={things}
            works={works}
            mixes={mixes}
            tab={tab}
            chosenMixId={chosenMixId}
            onTab={setTab}
            onChooseMix={chooseMix}
          />
        )}
      </div>
      {works && tray.answer && (
        <>
          <TakeOver waiting={scans.waiting + mixes.waiting} />
          <TrayBar studioId={studioId} sessionId={sessionId} lacking={tray.answer.lacking} />
        </>
      )}
    </Page>
  );
}
