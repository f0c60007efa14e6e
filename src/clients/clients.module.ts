import { Module } from '@nestjs/common';
import { IdentityModule } from '../identity/identity.module.js';
import { Client } from './client.entity.js';
import { ClientAccess } from './client-access.entity.js';
import { ClientAccessLog } from './client-access-log.service.js';
import { ClientAccesses } from './client-accesses.service.js';
import { ClientEraser } from './client-eraser.service.js';
import { ClientRightsController } from './client-rights.controller.js';
import { ClientsController } from './clients.controller.js';
import { Clients } from './clients.service.js';
import { ErasureList } from './erasure-list.service.js';
import { ErasurePreviews } from './erasure-preview.service.js';
import { ErasureRequest } from './erasure-request.entity.js';
import { Erasures } from './erasures.service.js';
import { LegalClaim, LegalClaimEnd } from './legal-claim.entity.js';
import { LegalClaims } from './legal-claims.service.js';
import { ShownClients } from './shown-clients.service.js';
import { StandingOfClients } from './standing-of-clients.service.js';
import { TreatedClients } from './treated-clients.service.js';
import { TreatmentRecords } from './treatment-records.service.js';

export const clientsEntities = [Client, ClientAccess, ErasureRequest, LegalClaim, LegalClaimEnd];

@Module({
  imports: [IdentityModule],
  controllers: [ClientsController, ClientRightsController],
  providers: [
    Clients,
    ShownClients,
    TreatedClients,
    TreatmentRecords,
    ClientAccessLog,
    ClientAccesses,
    StandingOfClients,
    ClientEraser,
    ErasureList,
    Erasures,
    ErasurePreviews,
    LegalClaims,
  ],
  exports: [
    Clients,
    ShownClients,
    TreatedClients,
    TreatmentRecords,
    ClientAccessLog,
    ClientAccesses,
    StandingOfClients,
    ErasureList,
    Erasures,
    LegalClaims,
  ],
})
export class ClientsModule {}
