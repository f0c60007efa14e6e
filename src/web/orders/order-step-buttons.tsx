import { Group } from '@mantine/core';
import { useRef } from 'react';
import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Section } from '../frame/section.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useTexts } from '../texts/texts.js';
import { type BareStep, takeStep } from './orders.requests.js';

const bareSteps = ['draft again', 'close', 'call off'] as const;

/** What ends an order, or makes it a draft again. */
export function OrderStepButtons({
  studioId,
  order: { id, version, steps, state, sentAt },
  onChanged,
}: {
  studioId: string;
  order: PurchaseOrderView;
  onChanged: () => Promise<void>;
}) {
  const words = useTexts().orders;
  const ids = useRef(new RequestIds()).current;
  const take = async (step: BareStep) => {
    const given = { version };
    await readAnewIfStale(
      () => takeStep(studioId, id, step, { id: ids.for({ step, ...given }), ...given }),
      onChanged,
    );
    await onChanged();
  };
  if (!bareSteps.some((step) => steps.includes(step))) return null;
  return (
    <Section title={words.endOrTakeBack}>
      <Group gap="sm">
        {steps.includes('draft again') && (
          <ConfirmButton question={words.draftAgainQuestion} action={() => take('draft-again')}>
            {words.draftAgainStep}
          </ConfirmButton>
        )}
        {steps.includes('close') && (
          <ConfirmButton question={words.closeQuestion} action={() => take('closing')}>
            {words.close}
          </ConfirmButton>
        )}
        {steps.includes('call off') && (
          <ConfirmButton
            question={sentAt === null ? words.callOffUnsentQuestion : words.callOffQuestion}
            action={() => take('call-off')}
          >
            {state === 'received in part' ? words.callOffRest : words.callOff}
          </ConfirmButton>
        )}
      </Group>
    </Section>
  );
}
