import type { ContainerStanding } from '../../../../recalls/containers/container-standing.js';
import type { DispositionKind, FindingResult } from '../../../../recalls/vocabulary.js';
import type { Event } from '../../../service/events.js';
import { request } from '../../../service/request.js';

export const listRecallContainers = (
  studioId: string,
  recallId: string,
  standing: ContainerStanding | undefined,
  after: string | undefined,
) =>
  request('GET', '/studios/{studioId}/recalls/{recallId}/containers', {
    studioId,
    recallId,
    ...(standing !== undefined && { standing }),
    ...(after !== undefined && { after }),
  });

export interface Finding {
  result: FindingResult;
  placeId?: string;
  tag?: string;
  photoId?: string;
  note?: string;
}

export const recordFinding = (
  studioId: string,
  recallId: string,
  containerId: string,
  finding: Finding,
  event: Event,
) =>
  request(
    'POST',
    '/studios/{studioId}/recalls/{recallId}/containers/{containerId}/findings',
    { studioId, recallId, containerId },
    { ...event, ...finding },
  );

export interface Disposition {
  kind: DispositionKind;
  pieces?: number;
  witnessId?: string;
  photoId?: string;
  reference: string;
  reason?: string;
}

export const recordDisposition = (
  studioId: string,
  recallId: string,
  containerId: string,
  disposition: Disposition,
  event: Event,
) =>
  request(
    'POST',
    '/studios/{studioId}/recalls/{recallId}/containers/{containerId}/dispositions',
    { studioId, recallId, containerId },
    { ...event, ...disposition },
  );
