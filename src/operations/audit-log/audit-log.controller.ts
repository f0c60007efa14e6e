import { Body, Controller, Get, Post, Query, StreamableFile } from '@nestjs/common';
import { ApiCreatedResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { WriteDto } from '../../platform/request.dto.js';
import { Verification } from '../verify/verification.service.js';
import { VerificationView } from '../verify/verification.views.js';
import { AuditEntries } from './audit-entries.service.js';
import { AuditPageDto } from './audit-log.dto.js';
import { AuditPageView } from './audit-log.views.js';
import { AuditLogExports } from './audit-log-export.service.js';

@ApiTags('operations')
@Controller('v1/studios/:studioId/audit-log')
export class AuditLogController {
  constructor(
    private readonly entries: AuditEntries,
    private readonly exports: AuditLogExports,
    private readonly verification: Verification,
  ) {}

  /** Who did what and when: the entries of the audit log. */
  @Needs('read the audit log')
  @Get()
  page(@CurrentActor() actor: Actor, @Query() query: AuditPageDto): Promise<AuditPageView> {
    return this.entries.page(actor, query);
  }

  /** Holds the studio's record against its audit log and the heads in the backups. Takes its time: minutes for a long record. */
  @Needs('read the audit log')
  @Get('verification')
  verify(@CurrentActor() actor: Actor): Promise<VerificationView> {
    return this.verification.verify(actor);
  }

  /** The whole audit log as NDJSON, for whoever will verify it without the service; the export is its last entry. */
  @Needs('read the audit log')
  @Post('exports')
  @ApiProduces('application/x-ndjson')
  @ApiCreatedResponse({ content: { 'application/x-ndjson': { schema: { type: 'string' } } } })
  async export(@CurrentActor() actor: Actor, @Body() dto: WriteDto): Promise<StreamableFile> {
    const { opening, lines } = await this.exports.export(actor, dto);
    return new StreamableFile(lines, {
      type: 'application/x-ndjson; charset=utf-8',
      disposition: `attachment; filename="audit-log-${opening.studioId}-${opening.head.sequence}.ndjson"`,
    });
  }
}
