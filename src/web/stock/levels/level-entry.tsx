import { Button } from '@mantine/core';
import { useState } from 'react';
import type { StandingView } from '../../../identity/sign-in/sign-in.views.js';
import { Entry } from '../../frame/entries.js';
import { PageLink } from '../../frame/navigation.js';
import { pathOf } from '../../frame/places.js';
import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { endsSoon, type NearDays } from '../ends-soon.js';
import { type Figure, Figures } from '../figures.js';
import { Sign } from '../sign.js';
import type { LevelRow } from './level-rows.js';
import { SetLevelForm } from './set-level-form.js';

/** How much is here of one shade or configuration, and what is to be seen to. */
export function LevelEntry({
  standing: { studioId, permissions },
  row,
  today,
  near,
  onChanged,
}: {
  standing: StandingView;
  row: LevelRow;
  today: string;
  near: NearDays;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const [setting, setSetting] = useState(false);
  const { subjectKind, name, about, products, quantities, reservedPieces, level, low, toTake } = row;
  const [only, ...further] = products;
  const lotsOf = (productId: string) => `${pathOf({ studioId, area: 'stock' }, 'lots')}?product=${productId}`;
  const soon = toTake.filter((one) => endsSoon(one, today, near)).map(({ lastDay }) => lastDay ?? '');
  const [first] = soon.sort();
  const figures: (Figure | false)[] = [
    { name: texts.levels.usable, value: quantities.usablePieces, isMain: true },
    { name: texts.levels.opened, value: quantities.openedContainers },
    { name: texts.levels.reserved, value: reservedPieces },
    quantities.heldPieces > 0 && { name: texts.levels.held, value: quantities.heldPieces },
    quantities.expiredPieces > 0 && { name: texts.levels.past, value: quantities.expiredPieces },
    quantities.practicePieces > 0 && { name: texts.levels.practice, value: quantities.practicePieces },
    { name: texts.levels.minimum, value: level?.minimumPieces ?? texts.levels.noMinimum },
  ];
  return (
    <Entry
      name={
        only && further.length === 0 && subjectKind === 'product' ? (
          <PageLink to={lotsOf(only.productId)} alone>
            {name}
          </PageLink>
        ) : (
          name
        )
      }
      actions={
        permissions.includes('set levels') &&
        !setting && (
          <Button
            variant="default"
            aria-label={texts.levels.setMinimumOf(name)}
            onClick={() => setSetting(true)}
          >
            {texts.levels.setMinimum}
          </Button>
        )
      }
      below={
        setting && (
          <SetLevelForm
            studioId={studioId}
            row={row}
            onChanged={async () => {
              await onChanged();
              setSetting(false);
            }}
            onStale={onChanged}
            onCancel={() => setSetting(false)}
          />
        )
      }
    >
      <p>{about.join(', ')}</p>
      {subjectKind === 'configuration' &&
        products.map((product) => (
          <div key={product.productId}>
            <PageLink to={lotsOf(product.productId)} alone>
              {product.name}
            </PageLink>
          </div>
        ))}
      {(low || quantities.endingSoonPieces > 0) && (
        <p>
          {low && <Sign standing="care">{texts.levels.low}</Sign>}
          {quantities.endingSoonPieces > 0 && (
            <Sign standing="care">
              {texts.levels.endingSoon(quantities.endingSoonPieces)}
              {first !== undefined && `, ${texts.levels.endsBy(writtenDay(first, texts.language))}`}
            </Sign>
          )}
        </p>
      )}
      <Figures figures={figures.filter((figure) => figure !== false)} />
    </Entry>
  );
}
