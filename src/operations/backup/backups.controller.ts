import { Controller, Get } from '@nestjs/common';
import { ApiParam, ApiTags } from '@nestjs/swagger';
import { Needs } from '../../identity/needs.decorator.js';
import { BackupStatus } from './backup-status.service.js';
import { BackupStatusView } from './backups.views.js';

@ApiTags('operations')
@ApiParam({ name: 'studioId', format: 'uuid' })
@Controller('v1/studios/:studioId/backups')
export class BackupsController {
  constructor(private readonly status: BackupStatus) {}

  /** When the last good backup was made, how many are kept, and what failed. */
  @Needs('see backups')
  @Get()
  show(): Promise<BackupStatusView> {
    return this.status.show();
  }
}
