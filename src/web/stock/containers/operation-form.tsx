import { NumberInput, TextInput } from '@mantine/core';
import { useState } from 'react';
import { localDay } from '../../../identity/local-day.js';
import type { ShownContainerView } from '../../../stock/container-list.views.js';
import { Choice } from '../../frame/choice.js';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import type { StudioFacts } from '../use-studio-facts.js';
import type { Operation } from './allowed-operations.js';
import type { GivenOperation } from './containers.requests.js';
import { dayInstant } from './day-instant.js';

const longestReason = 300;

type Asking = Exclude<Operation, 'open' | 'count' | 'finish' | 'keep for practice'>;
type Asked = 'pieces' | 'place' | 'day' | 'reason';

/** What a person is asked for; of a bottle there are no pieces to be named. */
const asked: Record<Asking, readonly Asked[]> = {
  discard: ['reason'],
  'waste pieces': ['pieces', 'reason'],
  return: ['pieces', 'reason'],
  move: ['place', 'pieces'],
  'correct opened date': ['day', 'reason'],
  'undo opening': ['reason'],
};

/** Asks for what has to be known of an operation, and records it. */
export function OperationForm({
  container,
  facts,
  operation,
  record,
  onCancel,
}: {
  container: ShownContainerView;
  facts: StudioFacts;
  operation: Asking;
  record: (given: GivenOperation) => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const isBox = container.form === 'box';
  const places = facts.places.filter(({ id }) => id !== container.placeId);
  const [reason, setReason] = useState('');
  const [pieces, setPieces] = useState<number | string>('');
  const [placeId, setPlaceId] = useState('');
  const [day, setDay] = useState(
    container.openedAt === null ? facts.today : localDay(container.openedAt, facts.timeZone),
  );
  const asks = (what: Asked) => asked[operation].includes(what) && (what !== 'pieces' || isBox);
  const mostPieces =
    operation === 'waste pieces' ? container.pieces : container.pieces - container.onTrays.pieces;
  const { run, busy, problem } = useAction(() =>
    record(given(operation, { reason, pieces, placeId, day }, facts.timeZone)),
  );
  return (
    <Fields onSubmit={() => void run()} label={texts.operations[operation]}>
      <p>{texts.operationHints[operation]}</p>
      {asks('place') && (
        <Choice
          label={texts.operationFields.place}
          required
          value={placeId}
          none={places.length === 0 ? texts.operationFields.noOtherPlace : ''}
          choices={places.map(({ id, name }) => ({ value: id, label: name }))}
          onChange={setPlaceId}
        />
      )}
      {asks('pieces') && (
        <NumberInput
          label={texts.operationFields.pieces}
          description={
            operation === 'waste pieces'
              ? undefined
              : texts.operationFields.piecesHint(Math.max(0, mostPieces))
          }
          required={operation === 'waste pieces'}
          min={1}
          max={Math.max(1, mostPieces)}
          clampBehavior="none"
          allowDecimal={false}
          allowNegative={false}
          hideControls
          value={pieces}
          onChange={setPieces}
        />
      )}
      {asks('day') && (
        <TextInput
          label={texts.operationFields.openedOn}
          type="date"
          required
          max={facts.today}
          value={day}
          onChange={(event) => setDay(event.currentTarget.value)}
        />
      )}
      {asks('reason') && (
        <TextInput
          label={texts.operationFields.reason}
          description={texts.operationFields.reasonHint}
          required
          maxLength={longestReason}
          autoComplete="off"
          value={reason}
          onChange={(event) => setReason(event.currentTarget.value)}
        />
      )}
      <SaveOrCancel problem={problem} busy={busy} save={texts.operations[operation]} onCancel={onCancel} />
    </Fields>
  );
}

function given(
  operation: Asking,
  filled: { reason: string; pieces: number | string; placeId: string; day: string },
  timeZone: string,
): GivenOperation {
  const { reason, placeId } = filled;
  const some = filled.pieces === '' ? {} : { pieces: Number(filled.pieces) };
  switch (operation) {
    case 'discard':
    case 'undo opening':
      return { operation, reason };
    case 'waste pieces':
      return { operation, pieces: Number(filled.pieces), reason };
    case 'return':
      return { operation, reason, ...some };
    case 'move':
      return { operation, placeId, ...some };
    case 'correct opened date':
      return {
        ...{ operation, reason },
        openedAt: dayInstant(filled.day, timeZone, new Date().toISOString()),
      };
  }
}
