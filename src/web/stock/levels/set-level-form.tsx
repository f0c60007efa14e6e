import { Button, NumberInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { readAnewIfStale } from '../../service/read-anew-if-stale.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import type { LevelRow } from './level-rows.js';
import { removeLevel, setLevel } from './levels.requests.js';

const mostPieces = 100_000;

/** At or below how many pieces something is low. */
export function SetLevelForm({
  studioId,
  row,
  onChanged,
  onStale,
  onCancel,
}: {
  studioId: string;
  row: LevelRow;
  onChanged: () => Promise<void>;
  /** Somebody else set it meanwhile. */
  onStale: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  const { level } = row;
  const [minimum, setMinimum] = useState<number | string>(level?.minimumPieces ?? '');
  const ids = useRef(new RequestIds()).current;
  const saving = useAction(async () => {
    const pieces = Number(minimum);
    const id = ids.for({ minimum: pieces, version: level?.version });
    await readAnewIfStale(() => setLevel(studioId, id, row, pieces), onStale);
    await onChanged();
  });
  const removing = useAction(async () => {
    if (level) {
      const id = ids.for({ removed: level.id, version: level.version });
      await readAnewIfStale(() => removeLevel(studioId, id, level), onStale);
    }
    await onChanged();
  });
  return (
    <Fields onSubmit={() => void saving.run()} label={texts.levels.setMinimumOf(row.name)}>
      <NumberInput
        label={texts.levels.minimum}
        description={texts.levels.minimumHint}
        required
        min={0}
        max={mostPieces}
        clampBehavior="strict"
        allowDecimal={false}
        allowNegative={false}
        hideControls
        value={minimum}
        onChange={setMinimum}
      />
      <SaveOrCancel
        problem={saving.problem ?? removing.problem}
        busy={saving.busy || removing.busy}
        onCancel={onCancel}
      />
      {level && (
        <div>
          <Button variant="default" loading={removing.busy} onClick={() => void removing.run()}>
            {texts.levels.removeMinimum}
          </Button>
        </div>
      )}
    </Fields>
  );
}
