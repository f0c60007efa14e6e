import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { ItemPlanningView } from '../../../reorder/settings/planning-settings.views.js';
import { ConfirmButton } from '../../frame/confirm-button.js';
import { Entry } from '../../frame/entries.js';
import { writtenPerMille } from '../../plans/figures/written-chance.js';
import { writtenMoney } from '../../plans/figures/written-money.js';
import { removeItemPlanning } from '../../plans/line/item-planning.requests.js';
import { ItemPlanningForm } from '../../plans/line/item-planning-form.js';
import { readAnewIfStale } from '../../service/read-anew-if-stale.js';
import { RequestIds } from '../../service/request-ids.js';
import { useTexts } from '../../texts/texts.js';

/** One item that is planned otherwise. */
export function ItemEntry({
  studioId,
  item,
  currency,
  onChanged,
}: {
  studioId: string;
  item: ItemPlanningView;
  currency: string;
  onChanged: () => Promise<void>;
}) {
  const texts = useTexts();
  const words = texts.planning;
  const [isChanging, setIsChanging] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const { itemKind, itemKey, version, serviceTargetPerMille, shortageCostMinor, rangeChoice } = item;
  const name = item.itemName ?? itemKey;
  const remove = async () => {
    const id = ids.for({ itemKind, itemKey, version });
    await readAnewIfStale(() => removeItemPlanning(studioId, { id, itemKind, itemKey, version }), onChanged);
    await onChanged();
  };
  return (
    <Entry
      name={name}
      actions={
        <>
          <Button
            variant="default"
            aria-label={words.changeOf(name)}
            aria-expanded={isChanging}
            onClick={() => setIsChanging(!isChanging)}
          >
            {words.change}
          </Button>
          <ConfirmButton label={words.removeOf(name)} question={words.removeQuestion(name)} action={remove}>
            {words.remove}
          </ConfirmButton>
        </>
      }
      below={
        isChanging && (
          <ItemPlanningForm
            studioId={studioId}
            item={{ kind: itemKind, key: itemKey }}
            planning={item}
            currency={currency}
            reload={onChanged}
            onClose={() => setIsChanging(false)}
          />
        )
      }
    >
      <p>
        {[
          serviceTargetPerMille !== null &&
            words.targetIs(writtenPerMille(serviceTargetPerMille, texts.language)),
          shortageCostMinor !== null &&
            words.shortageCosts(writtenMoney(shortageCostMinor, currency, texts.language)),
          rangeChoice !== null && texts.rangeChoices[rangeChoice],
          item.replacesProductId !== null && words.replaces(item.replacesProductName ?? words.unknownProduct),
        ]
          .filter((part) => part !== false)
          .join(', ')}
      </p>
    </Entry>
  );
}
