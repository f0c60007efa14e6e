import { TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { DateThresholdView } from '../../../stock/date-thresholds/date-thresholds.views.js';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { readAnewIfStale } from '../../service/read-anew-if-stale.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { setWarning } from './warnings.requests.js';

const days = { type: 'number', inputMode: 'numeric', min: 0, step: 1, autoComplete: 'off' } as const;

/** How many days before the end of one product the studio is told. */
export function WarningForm({
  studioId,
  productId,
  title,
  present,
  onChanged,
  onCancel,
}: {
  studioId: string;
  productId: string;
  /** Names the form by its product. */
  title: string;
  /** What is set by now; undefined: nothing. */
  present: DateThresholdView | undefined;
  onChanged: () => Promise<void>;
  onCancel: () => void;
}) {
  const words = useTexts().productDays;
  const [useBy, setUseBy] = useState(written(present?.useByNearDays));
  const [openedLife, setOpenedLife] = useState(written(present?.openedLifeEndingDays));
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const chosen = {
      useByNearDays: numberOf(useBy),
      openedLifeEndingDays: numberOf(openedLife),
      ...(present && { version: present.version }),
    };
    await readAnewIfStale(
      () => setWarning(studioId, productId, ids.for({ productId, ...chosen }), chosen),
      onChanged,
    );
    await onChanged();
    onCancel();
  });
  return (
    <Fields onSubmit={() => void run()} label={title}>
      <TextInput
        {...days}
        label={words.useByNear}
        description={words.useByNearHint}
        max={730}
        value={useBy}
        error={problem?.faultOf('useByNearDays')}
        onChange={(event) => setUseBy(event.currentTarget.value)}
      />
      <TextInput
        {...days}
        label={words.openedLifeEnding}
        description={words.openedLifeEndingHint}
        max={365}
        value={openedLife}
        error={problem?.faultOf('openedLifeEndingDays')}
        onChange={(event) => setOpenedLife(event.currentTarget.value)}
      />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
    </Fields>
  );
}

function written(count: number | null | undefined): string {
  return count == null ? '' : String(count);
}

function numberOf(text: string): number | null {
  return text === '' ? null : Number(text);
}
