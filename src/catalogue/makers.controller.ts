import { Body, Controller, Get, Param, Patch, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { AddCompanyDto, RenameCompanyDto } from './companies.dto.js';
import { Companies } from './companies.service.js';
import { CompanyView } from './companies.views.js';

@ApiTags('catalogue')
@Controller('v1/studios/:studioId/makers')
export class MakersController {
  constructor(private readonly companies: Companies) {}

  /** The brands whose name and batch code stand on labels. */
  @Needs('read the register')
  @Get()
  list(@CurrentActor() actor: Actor): Promise<CompanyView[]> {
    return this.companies.list(actor, 'maker');
  }

  /** Adds a maker. */
  @Needs('change the register')
  @Post()
  add(@CurrentActor() actor: Actor, @Body() dto: AddCompanyDto): Promise<CompanyView> {
    return this.companies.add(actor, 'maker', dto);
  }

  /** Renames a maker; what was recorded of past uses keeps the name of that time. */
  @Needs('change the register')
  @Patch(':makerId')
  rename(
    @CurrentActor() actor: Actor,
    @Param('makerId', IdPipe) makerId: string,
    @Body() dto: RenameCompanyDto,
  ): Promise<CompanyView> {
    return this.companies.rename(actor, 'maker', makerId, dto);
  }
}
