import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import { useNavigate } from 'react-router';
import { CompanyField } from '../catalogue/company-field.js';
import { Fields } from '../frame/fields.js';
import { pathOf } from '../frame/places.js';
import { ProblemNote } from '../frame/problem-note.js';
import { RequestIds } from '../service/request-ids.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { draftOrder } from './orders.requests.js';

/** Begins an empty order to a supplier, and opens it. */
export function DraftByHand({ studioId, mayAddSupplier }: { studioId: string; mayAddSupplier: boolean }) {
  const words = useTexts().orders;
  const open = useNavigate();
  const [supplierId, setSupplierId] = useState('');
  const ids = useRef(new RequestIds()).current;
  const { run, busy, problem } = useAction(async () => {
    const { id } = await draftOrder(studioId, { id: ids.for({ supplierId }), supplierId });
    ids.renew();
    void open(pathOf({ studioId, area: 'ordering' }, 'orders', id));
  });
  return (
    <Fields onSubmit={() => void run()} label={words.byHand}>
      <CompanyField
        studioId={studioId}
        kind="supplier"
        mayAdd={mayAddSupplier}
        value={supplierId}
        error={problem?.faultOf('supplierId')}
        onChange={setSupplierId}
      />
      <ProblemNote problem={problem} />
      <div>
        <Button type="submit" variant="default" loading={busy} disabled={supplierId === ''}>
          {words.draftSubmit}
        </Button>
      </div>
    </Fields>
  );
}
