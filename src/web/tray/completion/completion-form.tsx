import { Button } from '@mantine/core';
import { useRef } from 'react';
import { Link } from 'react-router';
import type { TrayLineView } from '../../../sessions/tray.views.js';
import { pathOfTray } from '../../frame/places.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { Section } from '../../frame/section.js';
import { useTexts } from '../../texts/texts.js';
import { BesidesList } from './besides-list.js';
import { CompletedLine } from './completed-line.js';
import styles from './completion.module.css';
import { CompletionBar } from './completion-bar.js';
import { SigningFields } from './signing-fields.js';
import type { useCompletion } from './use-completion.js';
import { WaitingNotes } from './waiting-notes.js';
import { Wrappers } from './wrappers.js';

/** What became of each thing, and the sign-off; filled in as it most likely was. */
export function CompletionForm({
  whose,
  lines,
  mixedOf,
  completion,
  waiting,
  onSendAgain,
}: {
  whose: { studioId: string; sessionId: string; personId: string };
  lines: readonly TrayLineView[];
  /** How much of a bottle is in which mixes, in words. */
  mixedOf: (containerId: string) => string[];
  completion: ReturnType<typeof useCompletion>;
  /** How much of what was scanned and dropped has not arrived yet. */
  waiting: number;
  onSendAgain: () => void;
}) {
  const texts = useTexts();
  const { studioId, sessionId, personId } = whose;
  const { draft, change, say } = completion;
  const field = useRef<HTMLInputElement>(null);
  const outcomes = lines.map((line) => completion.outcomeOf(line));
  return (
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
      <WaitingNotes whose={whose} waiting={waiting} onSendAgain={onSendAgain} />
      <Section title={texts.completion.things} hint={texts.completion.thingsHint}>
        <div className={styles.lines}>
          {lines.length === 0 && draft.besides.length === 0 && <p>{texts.completion.nothing}</p>}
          {lines.map((line) => (
            <CompletedLine
              key={line.id}
              line={line}
              outcome={completion.outcomeOf(line)}
              mixed={mixedOf(line.containerId)}
              drops={draft.drops[line.id] ?? 0}
              reason={draft.reasons[line.id] ?? ''}
              wrapperShown={draft.wrappers.includes(line.id)}
              isCalled={completion.calledId === line.id}
              fault={completion.faultOf(line.id)}
              onOutcome={(outcome) => say('outcomes', line.id, outcome)}
              onDrops={(drops) => say('drops', line.id, drops)}
              onReason={(reason) => say('reasons', line.id, reason)}
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
          onLines={completion.showWrapperOf}
          onBesides={completion.addBesides}
        />
      </Section>
      <SigningFields studioId={studioId} personId={personId} draft={draft} onChange={change} />
      <ProblemNote problem={completion.problem} />
      <CompletionBar
        undecided={outcomes.filter((outcome) => outcome === null).length}
        outcomes={outcomes}
        besides={draft.besides.length}
        busy={completion.busy}
        ready={completion.isWhole && waiting === 0}
        onComplete={completion.complete}
      />
    </div>
  );
}
