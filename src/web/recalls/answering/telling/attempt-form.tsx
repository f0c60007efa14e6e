import { Textarea } from '@mantine/core';
import { useRef, useState } from 'react';
import {
  type ContactChannel,
  type ContactOutcome,
  contactChannels,
  contactOutcomes,
} from '../../../../recalls/vocabulary.js';
import { Choice } from '../../../frame/choice.js';
import { Fields } from '../../../frame/fields.js';
import { SaveOrCancel } from '../../../frame/save-or-cancel.js';
import { Events } from '../../../service/events.js';
import { useAction } from '../../../service/use-action.js';
import { useForgetAnswers } from '../../../service/use-forget-answers.js';
import { useTexts } from '../../../texts/texts.js';
import { recordAttempt } from './telling.requests.js';
import type { ToTell } from './to-tell.js';

const longestNote = 1000;

/** One attempt to tell somebody, by what way and with what outcome. */
export function AttemptForm({
  studioId,
  recallId,
  toTell: { addressee, name },
  onRecorded,
  onCancel,
}: {
  studioId: string;
  recallId: string;
  toTell: ToTell;
  onRecorded: () => void;
  onCancel: () => void;
}) {
  const words = useTexts().recallTelling;
  const forget = useForgetAnswers();
  const [channel, setChannel] = useState<ContactChannel | ''>('');
  const [outcome, setOutcome] = useState<ContactOutcome | ''>('');
  const [note, setNote] = useState('');
  const events = useRef(new Events()).current;
  const { run, busy, problem } = useAction(async () => {
    if (channel === '' || outcome === '') return;
    const attempt = {
      ...addressee,
      channel,
      outcome,
      ...(note.trim() !== '' && { note: note.trim() }),
    };
    await recordAttempt(studioId, recallId, attempt, events.of(attempt));
    await forget();
    onRecorded();
  });
  return (
    <Fields onSubmit={() => void run()} label={words.logFor(name)}>
      <Choice
        label={words.channel}
        value={channel}
        none=""
        choices={contactChannels.map((value) => ({ value, label: words.channels[value] }))}
        required
        error={problem?.faultOf('channel')}
        onChange={setChannel}
      />
      <Choice
        label={words.outcome}
        value={outcome}
        none=""
        choices={contactOutcomes.map((value) => ({ value, label: words.outcomes[value] }))}
        required
        error={problem?.faultOf('outcome')}
        onChange={setOutcome}
      />
      <Textarea
        label={words.note}
        description={addressee.audience === 'client' ? words.noteHint.client : words.noteHint.others}
        autosize
        minRows={1}
        autoComplete="off"
        maxLength={longestNote}
        value={note}
        error={problem?.faultOf('note')}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} save={words.save} onCancel={onCancel} />
    </Fields>
  );
}
