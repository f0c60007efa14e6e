import type { ExpectedDeliveryView } from '../../stock/expected-deliveries/expected-deliveries.views.js';
import { Choice } from '../frame/choice.js';
import { ProblemNote } from '../frame/problem-note.js';
import { usePages } from '../service/use-pages.js';
import { listExpected } from '../stock/expected/expected.requests.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import type { DeliveryDraft, KeptDelivery } from './delivery-draft.js';

/** Which of the deliveries that are expected this one is; nothing is shown where none is. */
export function ExpectedField({
  studioId,
  delivery,
  draft,
  error,
}: {
  studioId: string;
  delivery: KeptDelivery;
  draft: DeliveryDraft;
  error: string | undefined;
}) {
  const texts = useTexts();
  const words = texts.expected;
  // Those that should have come by now stand first: the first page has them.
  const { items, problem } = usePages(['expected deliveries', studioId, 'expected'], (after) =>
    listExpected(studioId, 'expected', after),
  );
  if (problem) return <ProblemNote problem={problem} />;
  // It came, or was called off, since it was chosen: whoever receives sees that, and chooses anew.
  const chosenId = draft.expectedDeliveryId;
  const isGone = chosenId !== '' && items?.every(({ id }) => id !== chosenId) === true;
  if (items === undefined || (items.length === 0 && !isGone)) return null;
  const choose = (expectedDeliveryId: string) => {
    const chosen = items.find(({ id }) => id === expectedDeliveryId);
    if (chosen) chooseExpected(delivery, chosen);
    else delivery.change({ expectedDeliveryId });
  };
  return (
    <Choice
      label={words.which}
      description={words.whichHint}
      value={chosenId}
      none={words.noneOfThem}
      error={error}
      choices={[
        ...items.map(({ id, supplierName, reference, expectedOn }) => ({
          value: id,
          label: words.one(supplierName, reference, writtenDay(expectedOn, texts.language)),
        })),
        ...(isGone ? [{ value: chosenId, label: words.gone }] : []),
      ]}
      onChange={choose}
    />
  );
}

/** It is this one, and so from its supplier, ordered when it says. */
export function chooseExpected(
  delivery: KeptDelivery,
  { id, supplierId, orderedOn }: Pick<ExpectedDeliveryView, 'id' | 'supplierId' | 'orderedOn'>,
): void {
  delivery.change((draft) => ({
    expectedDeliveryId: id,
    supplierId,
    orderedOn: orderedOn ?? draft.orderedOn,
  }));
}
