import type { ContainerView } from '../../../stock/container-list.views.js';
import { readSymbol } from '../../catalogue/catalogue.requests.js';
import { isProblem } from '../../service/problem.js';
import { request } from '../../service/request.js';
import type { Wrapper } from './lines-of-wrapper.js';

/** More boxes of one lot than are offered to choose from. */
const mostOffered = 20;

export async function readWrapper(studioId: string, text: string): Promise<Wrapper> {
  const { labelCode, lotCode, product, text: read } = await readSymbol(studioId, text);
  return { labelCode, lotCode, productId: product?.id ?? null, text: read };
}

/** What a wrapper can have come from, when it is not of the tray. */
export async function containersOf(studioId: string, wrapper: Wrapper): Promise<ContainerView[]> {
  if (wrapper.labelCode !== null) {
    try {
      const { labelCode: code } = wrapper;
      return [await request('GET', '/studios/{studioId}/containers/by-label/{code}', { studioId, code })];
    } catch (error) {
      if (isProblem(error, 'not-found')) return [];
      throw error;
    }
  }
  const code = wrapper.lotCode ?? (wrapper.productId === null ? wrapper.text.trim() : undefined);
  if (code === undefined) {
    return containersWhere(studioId, { productId: wrapper.productId ?? undefined });
  }
  const { items } = await request('GET', '/studios/{studioId}/lots', {
    studioId,
    code,
    limit: mostOffered,
    ...(wrapper.productId !== null && { productId: wrapper.productId }),
  });
  const found = await Promise.all(items.map(({ id }) => containersWhere(studioId, { lotId: id })));
  return found.flat().slice(0, mostOffered);
}

async function containersWhere(
  studioId: string,
  of: { productId?: string | undefined; lotId?: string },
): Promise<ContainerView[]> {
  const { productId, lotId } = of;
  const { items } = await request('GET', '/studios/{studioId}/containers', {
    studioId,
    limit: mostOffered,
    ...(productId !== undefined && { productId }),
    ...(lotId !== undefined && { lotId }),
  });
  return items;
}
