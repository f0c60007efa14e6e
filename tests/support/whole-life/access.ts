import type { PersonView } from '../../../src/identity/people.views.js';
import type { ApiTokenView } from '../../../src/identity/sign-in/api-tokens.views.js';
import type { StudioView } from '../../../src/identity/studios.views.js';
import type { RecordingService } from './recording-service.js';
import type { Texts } from './texts.js';

/** People of a studio, by id. */
export interface LivedPeople {
  ownerId: string;
  artistId: string;
}

/** The settings of the studio, who works in it, and what programs may do. */
export async function liveAccess(service: RecordingService, texts: Texts): Promise<LivedPeople> {
  const { version } = await service.seen<StudioView>('');
  await service.changed('PATCH', '', {
    version,
    name: texts('studio'),
    timeZone: 'Europe/Vienna',
    currency: 'EUR',
    morning: '06:30',
    useByNearDays: 60,
    openedLifeEndingDays: 14,
    assumedOpenedLife: 'P6M',
    houseBlends: 'allowed',
    retentionPreset: 'own',
    retentionYears: 5,
    retentionLaw: texts('law'),
  });
  const [owner] = await service.seen<PersonView[]>('/people');
  const artist = await service.made<PersonView>('/people', { name: texts('artist'), role: 'artist' });
  const visitor = await service.made<PersonView>('/people', {
    name: texts('visitor'),
    role: 'auditor',
    until: '2099-12-31',
  });
  await service.changed('PATCH', `/people/${visitor.id}`, {
    version: visitor.version,
    name: texts('visitor later'),
    role: 'auditor',
    until: '2098-12-31',
    state: 'active',
  });
  await service.made(`/people/${visitor.id}/invitation`);
  const token = await service.made<ApiTokenView>('/tokens', {
    name: texts('token'),
    scopes: ['read stock'],
    days: 2,
  });
  await service.made(`/tokens/${token.id}/revocation`);
  await service.made('/chain/studios', {
    name: texts('branch'),
    timeZone: 'Europe/Vienna',
    ownerName: texts('branch owner'),
  });
  return { ownerId: owner?.id ?? '', artistId: artist.id };
}
