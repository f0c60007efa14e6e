import { request } from '../../service/request.js';
import { useAnswer } from '../../service/use-answer.js';
import { isUnderWay } from '../plans.requests.js';

/** What would have come of it if plans had been followed, as far as it was worked out. */
export const useReplays = (studioId: string) =>
  useAnswer(
    ['replays', studioId],
    () => request('GET', '/studios/{studioId}/plans/replay', { studioId }),
    ({ run }) => run !== null && isUnderWay(run),
  );

export const makeReplay = (studioId: string, write: { id: string }) =>
  request('POST', '/studios/{studioId}/plans/replay', { studioId }, write);
