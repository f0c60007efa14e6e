import { Button, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import { localDay } from '../../../identity/local-day.js';
import { Fields } from '../../frame/fields.js';
import { ProblemNote } from '../../frame/problem-note.js';
import { RequestIds } from '../../service/request-ids.js';
import { useStudio } from '../../service/studio-answers.js';
import { useAction } from '../../service/use-action.js';
import { useTexts } from '../../texts/texts.js';
import { makePlan } from '../plans.requests.js';
import { ExtraSessions } from './extra-sessions.js';
import {
  type ExtraSessionsDraft,
  emptyWhatIf,
  extraSessionsFaults,
  type WhatIfDraft,
  whatIfOf,
} from './what-if-draft.js';

const fields = [
  { field: 'target', fault: 'serviceTargetPerMille', min: 0, max: 100, step: 0.1 },
  { field: 'leadTimeDays', fault: 'leadTimeExtraDays', min: -365, max: 365, step: 1 },
  { field: 'price', fault: 'pricePerMille', min: -100, max: 900, step: 0.1 },
  { field: 'bookings', fault: 'bookingsPerMille', min: -100, max: 900, step: 0.1 },
] as const satisfies { field: keyof WhatIfDraft; fault: string; min: number; max: number; step: number }[];

/** What is to be supposed; what is left empty is as it is. */
export function WhatIfForm({
  studioId,
  item,
  onAsked,
}: {
  studioId: string;
  /** Undefined: all items. */
  item: { kind: 'product' | 'configuration'; key: string; label: string } | undefined;
  onAsked: (planId: string) => void;
}) {
  const texts = useTexts();
  const words = texts.whatIf;
  const ids = useRef(new RequestIds()).current;
  const [draft, setDraft] = useState(emptyWhatIf);
  const [extra, setExtra] = useState<ExtraSessionsDraft[]>([]);
  const [isTold, setIsTold] = useState(false);
  const timeZone = useStudio(studioId).answer?.timeZone ?? 'UTC';
  const today = localDay(new Date().toISOString(), timeZone);
  const isWhole = extra.every((one) => Object.keys(extraSessionsFaults(one, today)).length === 0);
  const whatIf = whatIfOf(draft, extra, item);
  const asking = useAction(async () => {
    setIsTold(true);
    if (!whatIf || !isWhole) return;
    const { id } = await makePlan(studioId, { id: ids.for(whatIf), purpose: 'what if', whatIf });
    ids.renew();
    onAsked(id);
  });
  return (
    <Fields
      onSubmit={() => void asking.run()}
      label={item === undefined ? words.ofAll : words.ofItem(item.label)}
    >
      {fields.map(({ field, fault, ...range }) => (
        <TextInput
          key={field}
          type="number"
          inputMode="decimal"
          autoComplete="off"
          label={words.fields[field]}
          description={words.fieldHints[field]}
          {...range}
          value={draft[field]}
          error={asking.problem?.faultOf(`whatIf.${fault}`)}
          onChange={({ currentTarget: { value } }) => setDraft((before) => ({ ...before, [field]: value }))}
        />
      ))}
      <ExtraSessions
        studioId={studioId}
        extra={extra}
        today={today}
        isTold={isTold}
        faultOf={(index, field) => asking.problem?.faultOf(`whatIf.extraSessions.${index}.${field}`)}
        onChange={setExtra}
      />
      <ProblemNote problem={asking.problem} />
      <div>
        <Button type="submit" loading={asking.busy} disabled={!whatIf && extra.length === 0}>
          {words.ask}
        </Button>
      </div>
    </Fields>
  );
}
