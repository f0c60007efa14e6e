import type { LevelTakenView } from '../../../reorder/plan/plans.views.js';
import { request } from '../../service/request.js';
import type { RequestIds } from '../../service/request-ids.js';

/** As many lines as the service takes at once. */
const atOnce = 200;

/** Takes all levels that nobody set by hand, and those lines that were ticked. */
export async function takeLevels({
  studioId,
  planId,
  all,
  ticked,
  ids,
}: {
  studioId: string;
  planId: string;
  all: boolean;
  ticked: readonly number[];
  ids: { all: RequestIds; ticked: RequestIds };
}): Promise<LevelTakenView[]> {
  const take = async (id: string, lineNumbers?: number[]) => {
    const { items } = await request(
      'POST',
      '/studios/{studioId}/plans/{planId}/levels',
      { studioId, planId },
      { id, ...(lineNumbers && { lineNumbers }) },
    );
    return items;
  };
  const taken = all ? await take(ids.all.for({ planId })) : [];
  for (let from = 0; from < ticked.length; from += atOnce) {
    const lineNumbers = ticked.slice(from, from + atOnce);
    taken.push(...(await take(ids.ticked.for({ planId, lineNumbers }), lineNumbers)));
  }
  return taken;
}
