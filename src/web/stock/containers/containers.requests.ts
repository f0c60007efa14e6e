import type { ContainerView } from '../../../stock/container-list.views.js';
import type { ContainerChangeView } from '../../../stock/container-operations.views.js';
import type { Event } from '../../service/events.js';
import { request } from '../../service/request.js';

export interface ContainerChoice {
  placeId?: string;
  state?: ContainerView['state'];
}

export const listContainers = (studioId: string, choice: ContainerChoice, after: string | undefined) =>
  request('GET', '/studios/{studioId}/containers', {
    studioId,
    ...choice,
    ...(after !== undefined && { after }),
  });
export const showContainer = (studioId: string, containerId: string) =>
  request('GET', '/studios/{studioId}/containers/{containerId}', { studioId, containerId });

/** What a person says happened to a container. */
export type GivenOperation =
  | { operation: 'open' | 'finish' }
  | { operation: 'discard' | 'undo opening'; reason: string }
  | { operation: 'waste pieces'; pieces: number; reason: string }
  | { operation: 'return'; reason: string; pieces?: number }
  | { operation: 'move'; placeId: string; pieces?: number }
  | { operation: 'keep for practice'; placeId?: string }
  | { operation: 'correct opened date'; openedAt: string; reason: string }
  | { operation: 'count'; pieces: number }
  | { operation: 'count'; bottle: 'still there' | 'missing' };

const base = '/studios/{studioId}/containers/{containerId}';

export function recordOperation(
  studioId: string,
  containerId: string,
  given: GivenOperation,
  event: Event,
): Promise<ContainerChangeView> {
  const at = { studioId, containerId };
  const { id } = event;
  switch (given.operation) {
    case 'open':
      return request('POST', `${base}/open`, at, event);
    case 'finish':
      return request('POST', `${base}/finish`, at, event);
    case 'discard':
      return request('POST', `${base}/discard`, at, { ...event, reason: given.reason });
    case 'undo opening':
      return request('POST', `${base}/undo-opening`, at, { id, reason: given.reason });
    case 'correct opened date':
      return request('POST', `${base}/correct-opened-date`, at, {
        ...{ id, openedAt: given.openedAt, reason: given.reason },
      });
    case 'waste pieces': {
      const { pieces, reason } = given;
      return request('POST', `${base}/waste`, at, { ...event, pieces, reason });
    }
    case 'return': {
      const { operation: _, ...what } = given;
      return request('POST', `${base}/return`, at, { ...event, ...what });
    }
    case 'move': {
      const { operation: _, ...what } = given;
      return request('POST', `${base}/move`, at, { ...event, ...what });
    }
    case 'keep for practice': {
      const { operation: _, ...what } = given;
      return request('POST', `${base}/keep-for-practice`, at, { ...event, ...what });
    }
    case 'count': {
      const { operation: _, ...what } = given;
      return request('POST', `${base}/count`, at, { ...event, ...what });
    }
  }
}
