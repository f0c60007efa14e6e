import { Button } from '@mantine/core';
import { useEffect, useRef, useState } from 'react';
import type { StandingView } from '../../../../identity/sign-in/sign-in.views.js';
import { type MessageLanguage, messageLanguages } from '../../../../recalls/messages/message-facts.js';
import type { RecallView } from '../../../../recalls/recalls.views.js';
import { Choice } from '../../../frame/choice.js';
import { ProblemNote } from '../../../frame/problem-note.js';
import { Section } from '../../../frame/section.js';
import { useAnswer } from '../../../service/use-answer.js';
import { useTexts } from '../../../texts/texts.js';
import { AttemptForm } from './attempt-form.js';
import { MessageActions } from './message-actions.js';
import { MessageElements, MessageRemarks } from './message-notes.js';
import { MessageSheet } from './message-sheet.js';
import styles from './telling.module.css';
import { prepareMessage } from './telling.requests.js';
import type { ToTell } from './to-tell.js';

/** The message for one of those who are to be told: to be read, printed or copied; then what came of telling them. */
export function MessagePart({
  standing,
  recall,
  toTell,
  onBack,
}: {
  standing: StandingView;
  recall: RecallView;
  toTell: ToTell;
  onBack: () => void;
}) {
  const texts = useTexts();
  const words = texts.recallTelling;
  const { studioId, studioName } = standing;
  const [language, setLanguage] = useState<MessageLanguage>(texts.language.startsWith('de') ? 'de' : 'en');
  const { addressee, name } = toTell;
  const back = useRef<HTMLButtonElement>(null);
  // The list was left somewhere below: a message is read from its top.
  useEffect(() => back.current?.focus(), []);
  const { answer, problem } = useAnswer(
    ['message of recall', studioId, recall.id, JSON.stringify(addressee), language],
    () => prepareMessage(studioId, recall.id, addressee, language),
  );
  // Printed, the page shows its sheet alone, which therefore stands in no section.
  return (
    <>
      <div className={styles.ways}>
        <Button ref={back} variant="default" onClick={onBack}>
          {words.back}
        </Button>
        <Choice
          label={words.language}
          value={language}
          choices={messageLanguages.map((value) => ({ value, label: words.languages[value] }))}
          onChange={(value) => value !== '' && setLanguage(value)}
        />
      </div>
      <ProblemNote problem={problem} />
      {!answer && !problem && <p role="status">{texts.app.loading}</p>}
      {answer && (
        <>
          <MessageRemarks remarks={answer.remarks} />
          <MessageSheet studioId={studioId} studioName={studioName} message={answer} name={name} />
          <MessageActions message={answer} />
          <MessageElements message={answer} />
        </>
      )}
      {recall.kind === 'recall' && (
        <Section title={words.log}>
          <AttemptForm
            studioId={studioId}
            recallId={recall.id}
            toTell={toTell}
            onRecorded={onBack}
            onCancel={onBack}
          />
        </Section>
      )}
    </>
  );
}
