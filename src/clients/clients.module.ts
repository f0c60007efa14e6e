import { Module } from '@nestjs/common';
import { Client } from './client.entity.js';

export const clientsEntities = [Client];

@Module({ controllers: [], providers: [], exports: [] })
export class ClientsModule {}
