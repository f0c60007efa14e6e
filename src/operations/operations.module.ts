import { Module } from '@nestjs/common';

/** Backup, restore, verification, retention: what keeps the record itself. */
@Module({})
export class OperationsModule {}
