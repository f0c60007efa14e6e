import { TextInput } from '@mantine/core';
import type { PlaceView } from '../../stock/places.views.js';
import { CompanyField } from '../catalogue/company-field.js';
import { Choice } from '../frame/choice.js';
import type { ServiceProblem } from '../service/problem.js';
import { useTexts } from '../texts/texts.js';
import type { DeliveryDraft, KeptDelivery } from './delivery-draft.js';
import { ExpectedField } from './expected-field.js';
import styles from './receiving.module.css';

const origins = ['purchase', 'gift or sample', 'opening stock'] as const;

/** Who sent it and where it goes; it can be said first or last. */
export function DeliveryFields({
  studioId,
  delivery,
  draft,
  places,
  usualPlaceId,
  mayChangeRegister,
  problem,
}: {
  studioId: string;
  delivery: KeptDelivery;
  draft: DeliveryDraft;
  places: readonly PlaceView[];
  usualPlaceId: string;
  mayChangeRegister: boolean;
  problem: ServiceProblem | undefined;
}) {
  const texts = useTexts();
  const words = texts.receiving;
  return (
    <div className={styles.scan}>
      <Choice
        label={words.origin}
        value={draft.origin}
        choices={origins.map((origin) => ({ value: origin, label: texts.receiving.origins[origin] }))}
        onChange={(origin) => origin !== '' && delivery.change({ origin })}
      />
      {draft.origin === 'purchase' && (
        <ExpectedField
          studioId={studioId}
          delivery={delivery}
          draft={draft}
          error={problem?.faultOf('expectedDeliveryId')}
        />
      )}
      {draft.origin === 'purchase' && (
        <CompanyField
          studioId={studioId}
          kind="supplier"
          mayAdd={mayChangeRegister}
          none={words.noSupplier}
          value={draft.supplierId}
          error={problem?.faultOf('supplierId')}
          onChange={(supplierId) => delivery.change({ supplierId })}
        />
      )}
      <TextInput
        label={words.reference}
        description={words.referenceHint}
        autoComplete="off"
        maxLength={100}
        value={draft.reference}
        error={problem?.faultOf('reference')}
        onChange={(event) => delivery.change({ reference: event.currentTarget.value })}
      />
      {draft.origin === 'purchase' && (
        <TextInput
          type="date"
          label={words.orderedOn}
          description={words.orderedOnHint}
          value={draft.orderedOn}
          error={problem?.faultOf('orderedOn')}
          onChange={(event) => delivery.change({ orderedOn: event.currentTarget.value })}
        />
      )}
      <Choice
        label={words.putAwayAt}
        description={words.putAwayAtHint}
        value={usualPlaceId}
        choices={places.map(({ id, name }) => ({ value: id, label: name }))}
        onChange={(placeId) => delivery.change({ placeId })}
      />
    </div>
  );
}
