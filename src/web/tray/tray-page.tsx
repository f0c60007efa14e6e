import { Button, Group, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../identity/sign-in/sign-in.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { Fields } from '../frame/fields.js';
import { NoSuchPage } from '../frame/no-such-page.js';
import { Note } from '../frame/note.js';
import { Page } from '../frame/page.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { deviceSettings } from '../scanner/device-settings.js';
import { Scanner } from '../scanner/scanner.js';
import { withSeparators } from '../scanner/typed-symbol.js';
import { Events } from '../service/events.js';
import { isProblem } from '../service/problem.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { listSessionsInSetup } from '../today/sessions.requests.js';
import { openContainer, type Shown, showTray } from './tray.requests.js';
import { TrayLine } from './tray-line.js';
import { useScans } from './use-scans.js';
import { VerdictPanel } from './verdict-panel.js';

/** Longer than any symbol of a thing on a tray. */
const longestSymbol = 500;

/**
 * Where a tray is laid: what a hand-held scanner types, or a lot typed from a label, is judged at once. Nothing has to be
 * pressed between two scans.
 */
export function TrayPage({ standing, sessionId }: { standing: StandingView; sessionId: string }) {
  const texts = useTexts();
  const { studioId, studioName, permissions } = standing;
  const tray = useAnswer(['tray', studioId, sessionId], () => showTray(studioId, sessionId));
  const inSetup = useAnswer(['sessions in setup', studioId], () => listSessionsInSetup(studioId));
  const session = inSetup.answer?.find(({ id }) => id === sessionId);
  const scans = useScans(studioId, sessionId, tray.reload);
  const [text, setText] = useState('');
  /** A container that was opened just now: it is not offered again. */
  const [openedId, setOpenedId] = useState<string>();
  const events = useRef(new Events()).current;
  const field = useRef<HTMLInputElement>(null);

  const show = (shown: Shown) => {
    // The field is there for the next scan at once, also after a button was pressed.
    field.current?.focus();
    scans.show(shown);
  };
  const sendAgain = () => {
    field.current?.focus();
    scans.sendAgain();
  };
  const submit = () => {
    if (text.trim() === '') return;
    setText('');
    show({ symbol: withSeparators(text, deviceSettings().separatorSubstitute) });
  };
  const opening = useAction(async (containerId: string) => {
    field.current?.focus();
    await openContainer(studioId, containerId, events.of({ opened: containerId }));
    events.renew();
    setOpenedId(containerId);
    await tray.reload();
  });

  if (isProblem(tray.problem, 'not-found')) return <NoSuchPage />;
  const works = permissions.includes('work the tray') && tray.answer?.state === 'in setup';
  const lines = tray.answer?.lines.filter(({ state }) => state === 'on tray') ?? [];
  return (
    <Page
      above={studioName}
      title={texts.tray.title}
      {...(session && { lead: texts.tray.of(session.clientReference, session.procedureName) })}
    >
      <ProblemNote problem={tray.problem} />
      {works && (
        <Scanner field={field} scan={scans.last?.scan} onShown={(symbol) => scans.show({ symbol })} />
      )}
      {works && (
        <Fields onSubmit={submit} label={texts.tray.scan}>
          <TextInput
            ref={field}
            autoFocus
            label={texts.tray.scan}
            description={texts.tray.scanHint}
            autoComplete="off"
            autoCapitalize="off"
            spellCheck={false}
            maxLength={longestSymbol}
            value={text}
            onChange={(event) => setText(event.currentTarget.value)}
          />
          <ProblemNote problem={scans.problem ?? opening.problem} />
          {scans.waiting > 0 && !scans.busy && (
            <Note kind="fault">
              <p>{texts.tray.waiting(scans.waiting)}</p>
              <Button variant="default" onClick={sendAgain}>
                {texts.tray.sendAgain}
              </Button>
            </Note>
          )}
          <div>
            <Button type="submit">{texts.tray.judge}</Button>
          </div>
        </Fields>
      )}
      {tray.answer && tray.answer.state !== 'in setup' && (
        <Note kind="plain">
          <p>{texts.tray.notInSetup(texts.sessionStates[tray.answer.state])}</p>
        </Note>
      )}
      {scans.last && (
        <VerdictPanel
          scan={scans.last.scan}
          symbol={scans.last.symbol}
          openedId={openedId}
          busy={scans.busy || opening.busy}
          onShow={show}
          onOpen={(containerId) => void opening.run(containerId)}
        />
      )}
      {tray.answer && (
        <Section title={texts.tray.lines} hint={texts.tray.linesHint}>
          {lines.length === 0 && <p>{texts.tray.empty}</p>}
          {lines.length > 0 && (
            <Entries label={texts.tray.lines}>
              {lines.map((line) => (
                <TrayLine
                  key={line.id}
                  studioId={studioId}
                  sessionId={sessionId}
                  line={line}
                  works={works}
                  onTakenOff={tray.reload}
                />
              ))}
            </Entries>
          )}
        </Section>
      )}
      {tray.answer && tray.answer.lacking.length > 0 && (
        <Section title={texts.tray.lacking} hint={texts.tray.lackingHint}>
          <Entries label={texts.tray.lacking}>
            {tray.answer.lacking.map(({ label, quantityPieces }) => (
              <Entry key={label} name={label}>
                <Group gap="xs">{texts.tray.pieces(quantityPieces)}</Group>
              </Entry>
            ))}
          </Entries>
        </Section>
      )}
    </Page>
  );
}
