import { Body, Controller, HttpCode, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { maximumLargerBodyBytes, TakesLargerBody } from '../platform/larger-body.decorator.js';
import { ReadNoticeFileDto } from './notice-files/notice-files.dto.js';
import { NoticeFiles } from './notice-files/notice-files.service.js';
import { NoticeFileView } from './notice-files/notice-files.views.js';

@ApiTags('recalls')
@Controller('v1/studios/:studioId/recalls/files')
export class NoticeFilesController {
  constructor(private readonly files: NoticeFiles) {}

  /** Reads a file of notices, notice by notice; writes nothing. With a fault in the file it is refused whole. */
  @Needs('answer recalls')
  @TakesLargerBody(maximumLargerBodyBytes)
  @Post()
  @HttpCode(200)
  read(@CurrentActor() actor: Actor, @Body() dto: ReadNoticeFileDto): Promise<NoticeFileView> {
    return this.files.read(actor, dto);
  }
}
