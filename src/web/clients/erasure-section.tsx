import { Checkbox } from '@mantine/core';
import { useRef, useState } from 'react';
import {
  answeredBy,
  type ErasureGround,
  type ErasureOverride,
  erasureGrounds,
} from '../../clients/erasure-decision.js';
import type { ErasurePreviewView } from '../../clients/erasures.views.js';
import { Choice } from '../frame/choice.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Entries, Entry } from '../frame/entries.js';
import { Note } from '../frame/note.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { RequestIds } from '../service/request-ids.js';
import { useAnswer } from '../service/use-answer.js';
import { useTexts } from '../texts/texts.js';
import { writtenInstant } from '../texts/written-dates.js';
import { askErasure, foreseeErasure, listErasureAnswers } from './clients.requests.js';
import styles from './erasure-section.module.css';

/** A wish for erasure: what would be answered comes first, with its reasons; then it is asked for. */
export function ErasureSection({
  studioId,
  clientId,
  reference,
  timeZone,
  mayAsk,
  onAnswered,
}: {
  studioId: string;
  clientId: string;
  reference: string;
  timeZone: string;
  mayAsk: boolean;
  /** An answer was recorded; much of what is shown may be gone. */
  onAnswered: () => Promise<void>;
}) {
  const texts = useTexts();
  const [ground, setGround] = useState<ErasureGround | ''>('');
  const answers = useAnswer(['erasure answers', studioId, clientId], () =>
    listErasureAnswers(studioId, clientId),
  );
  const earlier = answers.answer?.items ?? [];
  if (!mayAsk && earlier.length === 0 && !answers.problem) return null;
  return (
    <Section title={texts.client.erasure} hint={texts.client.erasureHint}>
      <ProblemNote problem={answers.problem} />
      {mayAsk && (
        <Choice
          label={texts.client.ground}
          value={ground}
          none={texts.client.chooseGround}
          choices={erasureGrounds.map((value) => ({ value, label: texts.client.grounds[value] }))}
          onChange={setGround}
        />
      )}
      {mayAsk && ground !== '' && (
        <Foreseen
          key={ground}
          studioId={studioId}
          clientId={clientId}
          reference={reference}
          ground={ground}
          onAnswered={async () => {
            setGround('');
            await onAnswered();
          }}
        />
      )}
      {earlier.length > 0 && (
        <div className={styles.answers}>
          <Entries label={texts.client.answers}>
            {earlier.map((answer) => (
              <Entry
                key={answer.id}
                name={texts.client.grounds[answer.ground]}
                mark={texts.client.answered[answer.answer]}
              >
                <p>{writtenInstant(answer.recordedAt, texts.language, timeZone)}</p>
                {answer.obstacles.map(({ kind, message, overriddenBy }) => (
                  <p key={kind}>{overriddenBy === null ? message : texts.client.overrides[overriddenBy]}</p>
                ))}
              </Entry>
            ))}
          </Entries>
        </div>
      )}
    </Section>
  );
}

function Foreseen({
  studioId,
  clientId,
  reference,
  ground,
  onAnswered,
}: {
  studioId: string;
  clientId: string;
  reference: string;
  ground: ErasureGround;
  onAnswered: () => Promise<void>;
}) {
  const texts = useTexts();
  const [overrides, setOverrides] = useState<ErasureOverride[]>([]);
  const ids = useRef(new RequestIds()).current;
  const { answer, problem } = useAnswer(['erasure preview', studioId, clientId, ground], () =>
    foreseeErasure(studioId, clientId, ground),
  );
  if (!answer) return problem ? <ProblemNote problem={problem} /> : <p role="status">{texts.app.loading}</p>;
  const sayable = sayableOf(answer);
  const stands = answer.obstacles.some(({ kind }) => {
    const word = answeredBy[kind];
    return word === null || !sayable.includes(word) || !overrides.includes(word);
  });
  const isUndecided = answer.obstacles.some(({ kind }) => kind === 'retention not chosen');
  const ask = async () => {
    const wish = { ground, overrides };
    await askErasure(studioId, clientId, { id: ids.for(wish), ...wish });
    await onAnswered();
  };
  return (
    <div className={styles.foreseen}>
      {answer.obstacles.length === 0 ? (
        <Note kind="plain">
          <p>{texts.client.wouldErase}</p>
        </Note>
      ) : (
        <Note kind="plain">
          <p>{stands ? texts.client.wouldRefuse : texts.client.wouldEraseThen}</p>
          <ul>
            {answer.obstacles.map(({ kind, message, article }) => (
              <li key={kind}>{article === null ? message : `${message} (${article})`}</li>
            ))}
          </ul>
        </Note>
      )}
      {sayable.length > 0 && (
        <Checkbox.Group
          label={texts.client.say}
          value={overrides}
          onChange={(said) => setOverrides(sayable.filter((word) => said.includes(word)))}
        >
          {sayable.map((word) => (
            <Checkbox key={word} mt="sm" value={word} label={texts.client.overrides[word]} />
          ))}
        </Checkbox.Group>
      )}
      {answer.openSessionIds.length > 0 && (
        <Note kind="fault">
          <p>{texts.client.openSessions(answer.openSessionIds.length)}</p>
        </Note>
      )}
      {isUndecided && (
        <Note kind="fault">
          <p>{texts.client.undecided}</p>
        </Note>
      )}
      {answer.openSessionIds.length === 0 && !isUndecided && (
        <div>
          <ConfirmButton
            question={stands ? texts.client.refuseQuestion(reference) : texts.client.askQuestion(reference)}
            action={ask}
          >
            {stands ? texts.client.askRefused : texts.client.ask}
          </ConfirmButton>
        </div>
      )}
    </div>
  );
}

/** On the studio's own motion nothing can be said against what stands in the way. */
function sayableOf({ ground, obstacles }: ErasurePreviewView): ErasureOverride[] {
  if (ground === 'retention over') return [];
  return obstacles.map(({ kind }) => answeredBy[kind]).filter((word) => word !== null);
}
