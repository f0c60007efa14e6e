import { Button, Group } from '@mantine/core';
import type { PurchaseOrderView } from '../../reorder/purchase-orders/purchase-orders.views.js';
import { ProblemNote } from '../frame/problem-note.js';
import { saveFile } from '../service/save-file.js';
import { useAction } from '../service/use-action.js';
import { useTexts } from '../texts/texts.js';
import { orderCsv, orderPdf } from './orders.requests.js';

/** The order as a document and as a table. */
export function OrderDocuments({
  studioId,
  order: { id, number },
}: {
  studioId: string;
  order: PurchaseOrderView;
}) {
  const words = useTexts().orders;
  const pdf = useAction(async () => saveFile(await orderPdf(studioId, id), `order-${number}.pdf`));
  const csv = useAction(async () => saveFile(await orderCsv(studioId, id), `order-${number}.csv`));
  return (
    <>
      <ProblemNote problem={pdf.problem ?? csv.problem} />
      <Group gap="sm" mt="md">
        <Button
          variant="default"
          loading={pdf.busy}
          aria-label={words.pdfOf(number)}
          onClick={() => void pdf.run()}
        >
          {words.pdf}
        </Button>
        <Button
          variant="default"
          loading={csv.busy}
          aria-label={words.csvOf(number)}
          onClick={() => void csv.run()}
        >
          {words.csv}
        </Button>
      </Group>
    </>
  );
}
