import { Button, Group, NumberInput } from '@mantine/core';
import { useState } from 'react';
import type { ShownContainerView } from '../../../stock/container-list.views.js';
import { countedPieces } from '../../../stock/laid-out-pieces.js';
import { Fields } from '../../frame/fields.js';
import { Note } from '../../frame/note.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { writtenAmount } from '../amounts.js';
import type { GivenOperation } from './containers.requests.js';

interface Counting {
  container: ShownContainerView;
  record: (given: GivenOperation) => Promise<void>;
  onCancel: () => void;
}

/** Counts a box, or looks for a bottle: what the book will change is shown before it does. */
export function CountForm(counting: Counting) {
  return counting.container.form === 'box' ? <CountBox {...counting} /> : <LookForBottle {...counting} />;
}

function CountBox({ container, record, onCancel }: Counting) {
  const texts = useTexts();
  const [counted, setCounted] = useState<number | string>('');
  const { run, busy, problem } = useAction(() => record({ operation: 'count', pieces: Number(counted) }));
  const { pieces: booked, onTrays } = container;
  const found =
    counted === '' ? undefined : countedPieces({ booked, onTrays: onTrays.pieces }, Number(counted));
  return (
    <Fields onSubmit={() => void run()} label={texts.operations.count}>
      <NumberInput
        label={texts.count.pieces}
        description={texts.count.piecesHint(onTrays.pieces)}
        required
        min={0}
        max={100_000}
        clampBehavior="strict"
        allowDecimal={false}
        allowNegative={false}
        hideControls
        value={counted}
        onChange={setCounted}
      />
      {found && (
        <Note kind="plain">
          <p>{texts.count.difference(booked, found.present, onTrays.pieces)}</p>
        </Note>
      )}
      <SaveOrCancel problem={problem} busy={busy} save={texts.count.book} onCancel={onCancel} />
    </Fields>
  );
}

function LookForBottle({ container, record, onCancel }: Counting) {
  const texts = useTexts();
  const { run, busy, problem } = useAction((bottle: 'still there' | 'missing') =>
    record({ operation: 'count', bottle }),
  );
  return (
    <Fields onSubmit={() => undefined} label={texts.operations.count}>
      <p>{texts.count.lookForBottle(writtenAmount(container, texts))}</p>
      <ProblemNote problem={problem} />
      <Group gap="sm">
        <Button loading={busy} onClick={() => void run('still there')}>
          {texts.count.stillThere}
        </Button>
        <Button variant="default" loading={busy} onClick={() => void run('missing')}>
          {texts.count.missing}
        </Button>
        <Button variant="default" onClick={onCancel}>
          {texts.app.cancel}
        </Button>
      </Group>
    </Fields>
  );
}
