import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import type { ExpectedDeliveryView } from '../../../stock/expected-deliveries/expected-deliveries.views.js';
import { ConfirmButton } from '../../frame/confirm-button.js';
import { Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { useStudioInstants } from '../../frame/use-studio-instants.js';
import { RequestIds } from '../../service/request-ids.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { Sign } from '../sign.js';
import { ChangeExpectedForm } from './change-expected-form.js';
import { callOffExpected, expectedCame } from './expected.requests.js';

/** One delivery that is expected, or was. */
export function ExpectedEntry({
  standing: { studioId, permissions },
  delivery,
  onChanged,
}: {
  standing: StandingView;
  delivery: ExpectedDeliveryView;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.expected;
  const when = useStudioInstants(studioId);
  const ids = useRef(new RequestIds()).current;
  const [isChanging, setIsChanging] = useState(false);
  const { id, supplierName, reference, orderedOn, expectedOn, late, endedAs, endedAt, deliveryId } = delivery;
  const day = words.on(writtenDay(expectedOn, texts.language));
  const name = [supplierName, reference].filter((part) => part !== null).join(', ');
  const what = `${name}, ${day}`;
  const isOpen = endedAs === null;
  const end = async (how: typeof callOffExpected) => {
    await how(studioId, id, ids.for({ id, how: how === callOffExpected ? 'called off' : 'received' }));
    await onChanged();
  };
  return (
    <Entry
      name={name}
      mark={endedAs === null ? undefined : words.endings[endedAs]}
      actions={
        <>
          {isOpen && !isChanging && permissions.includes('receive stock') && (
            <>
              <Button variant="default" aria-label={words.changeOf(what)} onClick={() => setIsChanging(true)}>
                {words.change}
              </Button>
              <ConfirmButton
                label={words.receivedOf(what)}
                question={words.receivedQuestion}
                action={() => end(expectedCame)}
              >
                {words.received}
              </ConfirmButton>
              <ConfirmButton
                label={words.callOffOf(what)}
                question={words.callOffQuestion}
                action={() => end(callOffExpected)}
              >
                {words.callOff}
              </ConfirmButton>
            </>
          )}
          {deliveryId !== null && (
            <PageLink
              to={pathOf({ studioId, area: 'stock' }, 'deliveries', deliveryId)}
              alone
              aria-label={words.toDeliveryOf(what)}
            >
              {words.toDelivery}
            </PageLink>
          )}
        </>
      }
      below={
        isChanging && (
          <ChangeExpectedForm
            studioId={studioId}
            delivery={delivery}
            title={words.changeOf(what)}
            mayAddSupplier={permissions.includes('change the register')}
            onChanged={onChanged}
            onClose={() => setIsChanging(false)}
          />
        )
      }
    >
      <p>
        {[
          day,
          orderedOn !== null && words.ordered(writtenDay(orderedOn, texts.language)),
          endedAt !== null && words.endedAt(when(endedAt)),
        ]
          .filter((part) => part !== false)
          .join(', ')}
      </p>
      {late && (
        <p>
          <Sign standing="care">{words.late}</Sign>
        </p>
      )}
    </Entry>
  );
}
