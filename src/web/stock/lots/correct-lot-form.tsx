import { Button, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { LotView } from '../../../stock/lot-list.views.js';
import { type CodeState, codeStates, type LotCodeKind } from '../../../stock/vocabulary.js';
import { Choice } from '../../frame/choice.js';
import { Fields } from '../../frame/fields.js';
import { SaveOrCancel } from '../../frame/save-or-cancel.js';
import { readAnewIfStale } from '../../service/read-anew-if-stale.js';
import { RequestIds } from '../../service/request-ids.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { asPrinted, type LotForm, lotCorrection } from './lot-correction.js';
import { correctLot } from './lots.requests.js';

const longestCode = 60;
const longestReason = 500;
const mostCodes = 10;

/** Puts right what was recorded of a lot; what stood there before stays findable. */
export function CorrectLotForm({
  studioId,
  lot,
  onCorrected,
  onStale,
  onCancel,
}: {
  studioId: string;
  lot: LotView;
  onCorrected: () => Promise<void>;
  /** Somebody else corrected it meanwhile. */
  onStale: () => Promise<void>;
  onCancel: () => void;
}) {
  const texts = useTexts();
  // Read anew after somebody else's correction, only what was written here is sent.
  const [begunFrom] = useState(lot);
  const [form, setForm] = useState<LotForm>(() => asPrinted(lot));
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async (separate: boolean) => {
    const correction = {
      ...lotCorrection(begunFrom, form),
      ...(separate && { sameCodeDecision: 'separate lot' as const }),
    };
    await readAnewIfStale(
      () => correctLot(studioId, lot, ids.for({ ...correction, version: lot.version }), correction),
      onStale,
    );
    ids.renew();
    await onCorrected();
  });
  const change = (changes: Partial<LotForm>) => setForm({ ...form, ...changes });
  const changeCode = (index: number, code: string) =>
    change({ codes: form.codes.map((one, at) => (at === index ? { ...one, code } : one)) });
  const add = (kind: LotCodeKind) => change({ codes: [...form.codes, { kind, code: '' }] });
  return (
    <Fields onSubmit={() => void run(false)} label={texts.lot.correct}>
      <Choice
        label={texts.correct.codeState}
        value={form.codeState}
        choices={codeStates.map((one: CodeState) => ({ value: one, label: texts.codeStates[one] }))}
        onChange={(value) => value !== '' && change({ codeState: value })}
      />
      {form.codeState === 'printed' &&
        form.codes.map(({ kind, code }, index) => (
          <TextInput
            // biome-ignore lint/suspicious/noArrayIndexKey: codes keep their order here.
            key={index}
            label={texts.lotCodeKinds[kind]}
            description={texts.correct.codeHint}
            maxLength={longestCode}
            autoComplete="off"
            autoCapitalize="off"
            spellCheck={false}
            value={code}
            onChange={(event) => changeCode(index, event.currentTarget.value)}
          />
        ))}
      {form.codeState === 'printed' && form.codes.length < mostCodes && (
        <div>
          <Button variant="default" onClick={() => add(form.codes.length === 0 ? 'lot' : 'batch')}>
            {texts.correct.addCode}
          </Button>
        </div>
      )}
      <TextInput
        label={texts.correct.useBy}
        description={texts.correct.useByHint}
        maxLength={20}
        autoComplete="off"
        value={form.useBy}
        onChange={(event) => change({ useBy: event.currentTarget.value })}
      />
      <TextInput
        label={texts.correct.manufacturedOn}
        description={texts.correct.manufacturedOnHint}
        maxLength={20}
        autoComplete="off"
        value={form.manufacturedOn}
        onChange={(event) => change({ manufacturedOn: event.currentTarget.value })}
      />
      <TextInput
        label={texts.correct.reason}
        description={texts.operationFields.reasonHint}
        required
        maxLength={longestReason}
        autoComplete="off"
        value={form.reason}
        onChange={(event) => change({ reason: event.currentTarget.value })}
      />
      <SaveOrCancel problem={problem} busy={busy} onCancel={onCancel} />
      {problem?.code === 'same-code-other-use-by' && (
        <div>
          <Button variant="default" loading={busy} onClick={() => void run(true)}>
            {texts.correct.separateLot}
          </Button>
        </div>
      )}
    </Fields>
  );
}
