import { Body, Controller, Get, Header, Param, Post, StreamableFile } from '@nestjs/common';
import { ApiOkResponse, ApiProduces, ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import { KeepPhotoDto } from './photos.dto.js';
import { Photos } from './photos.service.js';
import { PhotoView } from './photos.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/photos')
export class PhotosController {
  constructor(private readonly photos: Photos) {}

  /** Keeps a picture of a thing, sealed. Take no picture of a client here. */
  @Needs('find held stock')
  @Post()
  keep(@CurrentActor() actor: Actor, @Body() dto: KeepPhotoDto): Promise<PhotoView> {
    return this.photos.keep(actor, dto);
  }

  /** The picture itself, as it came. */
  @Needs('read recalls')
  @Get(':photoId')
  @Header('cache-control', 'no-store')
  @Header('content-disposition', 'inline')
  @Header('x-content-type-options', 'nosniff')
  @ApiProduces('image/jpeg', 'image/png')
  @ApiOkResponse({ schema: { type: 'string', format: 'binary' } })
  async show(
    @CurrentActor() actor: Actor,
    @Param('photoId', IdPipe) photoId: string,
  ): Promise<StreamableFile> {
    const { mediaType, bytes } = await this.photos.show(actor, photoId);
    return new StreamableFile(bytes, { type: mediaType, length: bytes.length });
  }
}
