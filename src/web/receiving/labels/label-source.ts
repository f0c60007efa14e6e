import type { ContainerView } from '../../../stock/container-list.views.js';
import type { AnsweredPage } from '../../service/use-pages.js';
import { listContainers, showDelivery } from '../receiving.requests.js';

/** Whose labels are printed. */
export interface LabelSource {
  kind: 'delivery' | 'lot' | 'product';
  id: string;
}

const kinds = ['delivery', 'lot', 'product'] as const;

/** As the address says it: `?delivery=…`, `?lot=…` or `?product=…`. */
export function sourceOf(query: URLSearchParams): LabelSource | undefined {
  for (const kind of kinds) {
    const id = query.get(kind);
    if (id !== null) return { kind, id };
  }
  return undefined;
}

/** What is here of it, page by page; a delivery is one page. */
export async function listContainersOf(
  studioId: string,
  { kind, id }: LabelSource,
  after: string | undefined,
): Promise<AnsweredPage<ContainerView>> {
  switch (kind) {
    case 'lot':
      return listContainers(studioId, { lotId: id, after });
    case 'product':
      return listContainers(studioId, { productId: id, after });
    case 'delivery':
      return { items: await listContainersOfDelivery(studioId, id), next: null };
  }
}

/** Those of its lots that came at its instant: a lot may have come in several deliveries. */
async function listContainersOfDelivery(studioId: string, deliveryId: string): Promise<ContainerView[]> {
  const { lines, occurredAt } = await showDelivery(studioId, deliveryId);
  const found: ContainerView[] = [];
  for (const lotId of new Set(lines.map((line) => line.lotId))) {
    let after: string | undefined;
    do {
      const page = await listContainers(studioId, { lotId, after });
      found.push(...page.items.filter(({ receivedAt }) => receivedAt === occurredAt));
      after = page.next ?? undefined;
    } while (after !== undefined);
  }
  return found;
}
