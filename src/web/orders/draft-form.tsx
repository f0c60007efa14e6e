import { Button, Group, Stack, TextInput } from '@mantine/core';
import { useRef, useState } from 'react';
import type {
  PurchaseOrderLineView,
  PurchaseOrderView,
} from '../../reorder/purchase-orders/purchase-orders.views.js';
import { Choice } from '../frame/choice.js';
import { Entries, Entry } from '../frame/entries.js';
import { Fields } from '../frame/fields.js';
import { ProblemNote } from '../frame/problem-note.js';
import type { Edits } from '../frame/use-edits.js';
import type { ServiceProblem } from '../service/problem.js';
import { readAnewIfStale } from '../service/read-anew-if-stale.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useAnswer } from '../service/use-answer.js';
import { ChangeForm } from '../settings/change-form.js';
import { nameOfOffer, wordsOfOffer } from '../suppliers/offer-words.js';
import { unreadableAmounts } from '../suppliers/unreadable-amounts.js';
import { useTexts } from '../texts/texts.js';
import { lineName } from './line-name.js';
import { changeOfOrder, type OrderDraft, packsOf, priceOf } from './order-draft.js';
import { changeOrder, offersOf } from './orders.requests.js';

/** Changes a draft: packs and prices, what brings it costs, lines taken off and added. */
export function DraftForm({
  studioId,
  order,
  edits,
  onChanged,
}: {
  studioId: string;
  order: PurchaseOrderView;
  edits: Edits<OrderDraft>;
  onChanged: () => Promise<void>;
}) {
  const words = useTexts().orders;
  const { id, version, currency, lines } = order;
  const save = async (requestId: string) => {
    const made = changeOfOrder(edits.changes, order);
    if ('unreadable' in made) throw unreadableAmounts(made.unreadable, words.noNumber(currency));
    await changeOrder(studioId, id, requestId, { version, ...made.change });
  };
  return (
    <Stack gap="xl" align="stretch">
      {lines.length === 0 && <p>{words.noLines}</p>}
      <ChangeForm label={words.change} edits={edits} version={version} save={save} reload={onChanged}>
        {(problem) => (
          <>
            <Entries label={words.whatIsOrdered}>
              {lines.map((line) => (
                <DraftLine
                  key={line.id}
                  studioId={studioId}
                  order={order}
                  line={line}
                  edits={edits}
                  problem={problem}
                  onChanged={onChanged}
                />
              ))}
            </Entries>
            <TextInput
              label={words.deliveryIn(currency)}
              description={words.deliveryHint}
              inputMode="decimal"
              autoComplete="off"
              value={edits.draft.delivery ?? ''}
              error={problem?.faultOf('delivery') ?? problem?.faultOf('deliveryCostMinor')}
              onChange={(event) => edits.set({ delivery: event.currentTarget.value })}
            />
          </>
        )}
      </ChangeForm>
      <AddLine studioId={studioId} order={order} onChanged={onChanged} />
    </Stack>
  );
}

function DraftLine({
  studioId,
  order: { id: orderId, version, currency, lines },
  line,
  edits,
  problem,
  onChanged,
}: {
  studioId: string;
  order: PurchaseOrderView;
  line: PurchaseOrderLineView;
  edits: Edits<OrderDraft>;
  problem: ServiceProblem | undefined;
  onChanged: () => Promise<void>;
}) {
  const words = useTexts().orders;
  const ids = useRef(new RequestIds()).current;
  const name = lineName(line);
  // Only what was changed is handed in, so faults are counted among the lines that were.
  const changed = lines.filter(({ id }) => packsOf(id) in edits.changes || priceOf(id) in edits.changes);
  const index = changed.indexOf(line);
  const takingOff = useAction(async () => {
    const change = { version, takeOff: [line.id] };
    await readAnewIfStale(() => changeOrder(studioId, orderId, ids.for(change), change), onChanged);
    await onChanged();
  });
  const field = (
    key: string,
    label: string,
    ariaLabel: string,
    inputMode: 'numeric' | 'decimal',
    fault?: string,
  ) => (
    <TextInput
      label={label}
      aria-label={ariaLabel}
      inputMode={inputMode}
      autoComplete="off"
      value={edits.draft[key] ?? ''}
      error={problem?.faultOf(key) ?? (fault === undefined ? undefined : problem?.faultOf(fault))}
      onChange={(event) => edits.set({ [key]: event.currentTarget.value })}
    />
  );
  return (
    <Entry
      name={`${line.makerName} ${name}`}
      actions={
        <Button
          variant="default"
          loading={takingOff.busy}
          aria-label={words.takeOffOf(name)}
          onClick={() => void takingOff.run()}
        >
          {words.takeOff}
        </Button>
      }
      below={
        <>
          <Group gap="sm" align="flex-end">
            {field(
              packsOf(line.id),
              words.packsLabel,
              words.packsOf(name),
              'numeric',
              `change.${index}.packs`,
            )}
            {field(
              priceOf(line.id),
              words.priceLabel(currency),
              words.priceOf(name, currency),
              'decimal',
              `change.${index}.packPriceMinor`,
            )}
          </Group>
          <ProblemNote problem={takingOff.problem} />
        </>
      }
    >
      <p>
        {[
          words.packOf(line.packContainers, line.containerPieces),
          line.orderCode !== null && words.code(line.orderCode),
        ]
          .filter((part) => part !== false)
          .join(', ')}
      </p>
    </Entry>
  );
}

/** Adds a product that the supplier offers. */
function AddLine({
  studioId,
  order: { id, version, supplierId, lines },
  onChanged,
}: {
  studioId: string;
  order: PurchaseOrderView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.orders;
  const [offerId, setOfferId] = useState('');
  const ids = useRef(new RequestIds()).current;
  const { answer: offers, problem: noOffers } = useAnswer(['offers of supplier', studioId, supplierId], () =>
    offersOf(studioId, supplierId),
  );
  const free = offers?.items.filter(
    (offer) => offer.endedAt === null && !lines.some((line) => line.offerId === offer.id),
  );
  const { run, busy, problem } = useAction(async () => {
    const offer = free?.find((each) => each.id === offerId);
    if (!offer) return;
    const change = { version, add: [{ offerId, packs: offer.minimumPacks }] };
    await readAnewIfStale(() => changeOrder(studioId, id, ids.for(change), change), onChanged);
    ids.renew();
    setOfferId('');
    await onChanged();
  });
  if (offers !== undefined && offers.items.length === 0) return <p>{words.noOffers}</p>;
  return (
    <Fields onSubmit={() => void run()} label={words.addLine}>
      <Choice
        label={words.addLine}
        description={words.offerHint}
        value={offerId}
        none={words.choose}
        choices={(free ?? []).map((offer) => ({
          value: offer.id,
          label: `${nameOfOffer(offer)}, ${wordsOfOffer(offer, texts).prices}`,
        }))}
        onChange={setOfferId}
      />
      <ProblemNote problem={problem ?? noOffers} />
      <div>
        <Button type="submit" variant="default" loading={busy} disabled={offerId === ''}>
          {words.add}
        </Button>
      </div>
    </Fields>
  );
}
