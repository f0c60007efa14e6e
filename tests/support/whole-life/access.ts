import { v7 as uuidv7 } from 'uuid';
import type { PersonView } from '../../../src/identity/people.views.js';
import type { ApiTokenView } from '../../../src/identity/sign-in/api-tokens.views.js';
import type { MadeLinkView } from '../../../src/identity/sign-in/sign-in.views.js';
import type { StudioView } from '../../../src/identity/studios.views.js';
import type { TabletView } from '../../../src/identity/tablets/tablets.views.js';
import { acceptInvitation } from '../signing-in.js';
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
    contactPoint: texts('contact point'),
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
  await liveTablets(service, texts);
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

/** A tablet is enrolled at a browser, so somebody has to come in at one. */
async function liveTablets(service: RecordingService, texts: Texts): Promise<void> {
  const manager = await service.made<PersonView>('/people', { name: texts('manager'), role: 'manager' });
  const { link } = await service.made<MadeLinkView>(`/people/${manager.id}/invitation`);
  const cookie = await acceptInvitation(service, link, `${uuidv7()}@studio.example`);
  // So is a calendar's address.
  await service.made('/calendar-address', {}, { cookie });
  await service.made('/calendar-address/remove', {}, { cookie });
  const tablet = await service.made<TabletView>('/tablets', { name: texts('tablet') }, { cookie });
  await service.changed('PATCH', `/tablets/${tablet.id}`, {
    version: tablet.version,
    name: texts('tablet renamed'),
  });
  await service.made(`/tablets/${tablet.id}/revocation`);
  await service.made(`/people/${manager.id}/badge`);
  await service.made(`/people/${manager.id}/badge/withdrawal`);
  await service.made(`/people/${manager.id}/sign-out`);
}
