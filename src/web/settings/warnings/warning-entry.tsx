import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { DateThresholdView } from '../../../stock/date-thresholds/date-thresholds.views.js';
import { wordsOfProduct } from '../../catalogue/product-words.js';
import { ConfirmButton } from '../../frame/confirm-button.js';
import { Entry } from '../../frame/entries.js';
import { readAnewIfStale } from '../../service/read-anew-if-stale.js';
import { RequestIds } from '../../service/request-ids.js';
import { useTexts } from '../../texts/texts.js';
import { WarningForm } from './warning-form.js';
import { removeWarning } from './warnings.requests.js';

/** One product with days of warning of its own. */
export function WarningEntry({
  studioId,
  warning,
  maySet,
  onChanged,
}: {
  studioId: string;
  warning: DateThresholdView;
  maySet: boolean;
  onChanged: () => Promise<void>;
}) {
  const words = useTexts().productDays;
  const [isChanging, setIsChanging] = useState(false);
  const ids = useRef(new RequestIds()).current;
  const { productId, version, useByNearDays, openedLifeEndingDays } = warning;
  const name = wordsOfProduct({ ...warning, name: warning.productName, notation: null });
  const remove = async () => {
    const id = ids.for({ productId, version });
    await readAnewIfStale(() => removeWarning(studioId, productId, id, version), onChanged);
    await onChanged();
  };
  return (
    <Entry
      name={name}
      actions={
        maySet &&
        !isChanging && (
          <>
            <Button variant="default" aria-label={words.changeOf(name)} onClick={() => setIsChanging(true)}>
              {words.change}
            </Button>
            <ConfirmButton label={words.removeOf(name)} question={words.removeQuestion(name)} action={remove}>
              {words.remove}
            </ConfirmButton>
          </>
        )
      }
      below={
        isChanging && (
          <WarningForm
            studioId={studioId}
            productId={productId}
            title={words.setOf(name)}
            present={warning}
            reload={onChanged}
            onClose={() => setIsChanging(false)}
          />
        )
      }
    >
      <p>
        {[
          useByNearDays !== null && words.beforeUseBy(useByNearDays),
          openedLifeEndingDays !== null && words.beforeEndOfLife(openedLifeEndingDays),
        ]
          .filter((part) => part !== false)
          .join(', ')}
      </p>
    </Entry>
  );
}
