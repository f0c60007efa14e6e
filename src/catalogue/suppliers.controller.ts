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
@Controller('v1/studios/:studioId/suppliers')
export class SuppliersController {
  constructor(private readonly companies: Companies) {}

  /** Those who sold goods to the studios. */
  @Needs('read the register')
  @Get()
  list(@CurrentActor() actor: Actor): Promise<CompanyView[]> {
    return this.companies.list(actor, 'supplier');
  }

  /** Adds a supplier. */
  @Needs('change the register')
  @Post()
  add(@CurrentActor() actor: Actor, @Body() dto: AddCompanyDto): Promise<CompanyView> {
    return this.companies.add(actor, 'supplier', dto);
  }

  /** Renames a supplier. */
  @Needs('change the register')
  @Patch(':supplierId')
  rename(
    @CurrentActor() actor: Actor,
    @Param('supplierId', IdPipe) supplierId: string,
    @Body() dto: RenameCompanyDto,
  ): Promise<CompanyView> {
    return this.companies.rename(actor, 'supplier', supplierId, dto);
  }
}
