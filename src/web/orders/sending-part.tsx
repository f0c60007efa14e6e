import { Button, Group, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type { OrderWay } from '../../reorder/purchase-orders/order-states.js';
import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { ConfirmButton } from '../frame/confirm-button.js';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { sendOrder } from './orders.requests.js';

/** Sends an approved order by mail, or notes that somebody sent it. */
export function SendingPart({
  studioId,
  order: { id, version, mail, mailObstacle },
  onChanged,
}: {
  studioId: string;
  order: PurchaseOrderView;
  onChanged: () => Promise<void>;
}) {
  const words = useTexts().orders;
  const [expectedOn, setExpectedOn] = useState('');
  const ids = useRef(new RequestIds()).current;
  const send = async (as: OrderWay) => {
    const sending = { version, as, ...(expectedOn !== '' && { expectedOn }) };
    await readAnewIfStale(() => sendOrder(studioId, id, { id: ids.for(sending), ...sending }), onChanged);
    ids.renew();
    await onChanged();
  };
  const byMail = useAction(() => send('mail'));
  const isOnTheWay = mail?.state === 'waiting';
  return (
    <Section
      title={words.sending}
      hint={mailObstacle === null ? words.sendMailHint : words.obstacles[mailObstacle]}
    >
      <Fields onSubmit={() => void byMail.run()} label={words.sending}>
        <TextInput
          type="date"
          label={words.expectedOnLabel}
          description={words.expectedOnHint}
          value={expectedOn}
          error={byMail.problem?.faultOf('expectedOn')}
          onChange={(event) => setExpectedOn(event.currentTarget.value)}
        />
        <ProblemNote problem={byMail.problem} />
        <Group gap="sm">
          {mailObstacle === null && !isOnTheWay && (
            <Button type="submit" loading={byMail.busy}>
              {mail === null ? words.sendMail : words.sendMailAgain}
            </Button>
          )}
          <ConfirmButton
            variant={mailObstacle === null ? 'default' : 'filled'}
            question={words.sendByHandQuestion}
            action={() => send('by hand')}
          >
            {words.sendByHand}
          </ConfirmButton>
        </Group>
      </Fields>
    </Section>
  );
}
