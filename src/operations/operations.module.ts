import { Module } from '@nestjs/common';
import { AlertsModule } from '../alerts/alerts.module.js';
import { ClientsModule } from '../clients/clients.module.js';
import { IdentityModule } from '../identity/identity.module.js';
import { AuditEntries } from './audit-log/audit-entries.service.js';
import { AuditLogController } from './audit-log/audit-log.controller.js';
import { AuditLogExports } from './audit-log/audit-log-export.service.js';
import { BackupConditions } from './backup/backup-conditions.service.js';
import { BackupSchedule } from './backup/backup-schedule.service.js';
import { BackupStatus } from './backup/backup-status.service.js';
import { BackupsController } from './backup/backups.controller.js';
import { HealthController } from './health/health.controller.js';
import { Readiness } from './health/readiness.service.js';
import { MasterKeyRotation } from './master-keys/master-key-rotation.service.js';
import { RestoredRecord } from './restore/restored-record.service.js';
import { RetentionController } from './retention/retention.controller.js';
import { Retention } from './retention/retention.service.js';
import { Verification } from './verify/verification.service.js';

/** Backup, restore, verification, retention: what keeps the record itself. */
@Module({
  imports: [IdentityModule, AlertsModule, ClientsModule],
  controllers: [BackupsController, HealthController, AuditLogController, RetentionController],
  providers: [
    Readiness,
    BackupStatus,
    BackupConditions,
    BackupSchedule,
    MasterKeyRotation,
    RestoredRecord,
    AuditEntries,
    AuditLogExports,
    Verification,
    Retention,
  ],
})
export class OperationsModule {}
