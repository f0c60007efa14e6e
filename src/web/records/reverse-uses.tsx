import { Button, Modal, Textarea } from '@mantine/core';
import { useRef, useState } from 'react';
import { productLabel } from '../../catalogue/product-label.js';
import type { SessionView, UseView } from '../../sessions/session-record.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { Fields } from '../frame/fields.js';
import { SaveOrCancel } from '../frame/save-or-cancel.js';
import { Events } from '../service/events.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { amountOf } from './amount-of.js';
import { reverseUse } from './records.requests.js';

/** The uses that stand, each of which can be reversed when it was a mistake. */
export function ReverseUses({
  studioId,
  session,
  onReversed,
  onDone,
}: {
  studioId: string;
  session: SessionView;
  onReversed: () => Promise<void>;
  onDone: () => void;
}) {
  const texts = useTexts();
  const [reversing, setReversing] = useState<UseView>();
  const standing = session.uses.filter((use) => use.reversal === null);
  return (
    <>
      <Entries label={texts.late.usesThatStand}>
        {standing.map((use) => (
          <Entry
            key={use.id}
            name={productLabel(use)}
            actions={
              <Button
                variant="default"
                aria-label={texts.late.reverseOf(productLabel(use), use.lotCode ?? texts.session.noLotCode)}
                onClick={() => setReversing(use)}
              >
                {texts.late.reverse}
              </Button>
            }
          >
            <p>
              {[
                `${texts.session.lot} ${use.lotCode ?? texts.session.noLotCode}`,
                amountOf(use, session.mixes, texts),
              ].join(', ')}
            </p>
          </Entry>
        ))}
      </Entries>
      <Button mt="md" variant="default" onClick={onDone}>
        {texts.app.cancel}
      </Button>
      <Modal
        opened={reversing !== undefined}
        onClose={() => setReversing(undefined)}
        title={texts.late.reverse}
        centered
        closeButtonProps={{ 'aria-label': texts.app.close, size: 'xl' }}
      >
        {reversing && (
          <ReverseForm
            studioId={studioId}
            sessionId={session.id}
            use={reversing}
            onCancel={() => setReversing(undefined)}
            onReversed={async () => {
              await onReversed();
              setReversing(undefined);
            }}
          />
        )}
      </Modal>
    </>
  );
}

function ReverseForm({
  studioId,
  sessionId,
  use,
  onReversed,
  onCancel,
}: {
  studioId: string;
  sessionId: string;
  use: UseView;
  onReversed: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const [reason, setReason] = useState('');
  const events = useRef(new Events()).current;
  const { run, busy, problem } = useAction(async () => {
    // Nothing can be said of a client who was erased; of others the service asks for it.
    const told = reason.trim() === '' ? {} : { reason: reason.trim() };
    await reverseUse(studioId, sessionId, use.id, { ...events.of({ use: use.id, ...told }), ...told });
    await onReversed();
  });
  const fault = problem?.faultOf('reason');
  return (
    <Fields
      onSubmit={() => void run()}
      label={texts.late.reverseOf(productLabel(use), use.lotCode ?? texts.session.noLotCode)}
    >
      <p>{texts.late.reverseQuestion}</p>
      <p>{`${productLabel(use)}, ${texts.session.lot} ${use.lotCode ?? texts.session.noLotCode}`}</p>
      <Textarea
        label={texts.late.reverseReason}
        autosize
        minRows={2}
        maxLength={500}
        data-autofocus
        value={reason}
        error={fault}
        onChange={(event) => setReason(event.currentTarget.value)}
      />
      <SaveOrCancel
        problem={fault === undefined ? problem : undefined}
        busy={busy}
        save={texts.late.reverse}
        onCancel={onCancel}
      />
    </Fields>
  );
}
