import { Button } from '@mantine/core';
import { useState } from 'react';
import { productLabel } from '../../catalogue/product-label.js';
import type { TraceUseView } from '../../sessions/trace.views.js';
import { Entries, Entry } from '../frame/entries.js';
import { MoreButton } from '../frame/more-button.js';
import { PageLink } from '../frame/navigation.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { Section } from '../frame/section.js';
import { usePages } from '../service/use-pages.js';
import { useTexts } from '../texts/texts.js';
import { writtenDay } from '../texts/written-dates.js';
import { traceClient } from './clients.requests.js';

/** Every lot that touched a client, however deep in a mix or blend; reversed uses touched nobody. */
export function LotsSection({ studioId, clientId }: { studioId: string; clientId: string }) {
  const texts = useTexts();
  const [shown, setShown] = useState(false);
  return (
    <Section title={texts.client.lots} hint={texts.client.lotsHint}>
      {shown ? (
        <Lots studioId={studioId} clientId={clientId} />
      ) : (
        <Button variant="default" onClick={() => setShown(true)}>
          {texts.client.showLots}
        </Button>
      )}
    </Section>
  );
}

function Lots({ studioId, clientId }: { studioId: string; clientId: string }) {
  const texts = useTexts();
  const list = usePages(['client trace', studioId, clientId], (after) =>
    traceClient(studioId, clientId, after),
  );
  const lots = lotsOf(list.items ?? []);
  return (
    <>
      <ProblemNote problem={list.problem} />
      {!list.items && !list.problem && <p role="status">{texts.app.loading}</p>}
      {list.items !== undefined && lots.length === 0 && <p>{texts.client.noLots}</p>}
      {lots.length > 0 && (
        <Entries label={texts.client.lots}>
          {lots.map((lot) => {
            const name = texts.client.lotOf(productLabel(lot), lot.lotCode ?? texts.client.noCode);
            return (
              <Entry
                key={lot.lotId}
                name={name}
                actions={
                  <PageLink to={pathOf({ studioId, area: 'stock' }, 'lots', lot.lotId)} alone>
                    {`${texts.session.lot} ${lot.lotCode ?? ''}`}
                  </PageLink>
                }
              >
                <p>
                  {[
                    lot.useBy !== null && texts.client.usableBy(writtenDay(lot.useBy, texts.language)),
                    !lot.direct && texts.client.throughBlend,
                  ]
                    .filter(Boolean)
                    .join(', ')}
                </p>
              </Entry>
            );
          })}
        </Entries>
      )}
      <MoreButton list={list} />
    </>
  );
}

function lotsOf(uses: readonly TraceUseView[]) {
  const lots = uses.filter(({ reversedAt }) => reversedAt === null).flatMap((use) => use.lots);
  // Once each; directly, where both.
  const sorted = [...lots].sort((one, other) => Number(one.direct) - Number(other.direct));
  return [...new Map(sorted.map((lot) => [lot.lotId, lot])).values()];
}
