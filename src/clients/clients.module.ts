import { Module } from '@nestjs/common';
import { Client } from './client.entity.js';
import { ClientsController } from './clients.controller.js';
import { Clients } from './clients.service.js';
import { TreatedClients } from './treated-clients.service.js';

export const clientsEntities = [Client];

@Module({
  controllers: [ClientsController],
  providers: [Clients, TreatedClients],
  exports: [Clients, TreatedClients],
})
export class ClientsModule {}
