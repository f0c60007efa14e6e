import { Body, Controller, Param, Post } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../identity/actor.guard.js';
import { Needs } from '../identity/needs.decorator.js';
import type { Actor } from '../platform/actor.js';
import { IdPipe } from '../platform/id.pipe.js';
import { ContainerCount } from './container-count.service.js';
import { ContainerEnding } from './container-ending.service.js';
import { ContainerMove } from './container-move.service.js';
import { ContainerOpening } from './container-opening.service.js';
import {
  CorrectOpenedDateDto,
  CountContainerDto,
  DiscardContainerDto,
  FinishContainerDto,
  KeepForPracticeDto,
  MoveContainerDto,
  OpenContainerDto,
  ReturnContainerDto,
  UndoOpeningDto,
  WastePiecesDto,
} from './container-operations.dto.js';
import { ContainerChangeView } from './container-operations.views.js';

@ApiTags('stock')
@Controller('v1/studios/:studioId/containers/:containerId')
export class ContainerOperationsController {
  constructor(
    private readonly opening: ContainerOpening,
    private readonly ending: ContainerEnding,
    private readonly counting: ContainerCount,
    private readonly moving: ContainerMove,
  ) {}

  /** Records that a bottle was opened, also against a hold or past a date, with warnings. */
  @Needs('open containers')
  @Post('open')
  open(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: OpenContainerDto,
  ): Promise<ContainerChangeView> {
    return this.opening.open(actor, containerId, dto);
  }

  /** Corrects the day on which a bottle was opened. */
  @Needs('handle stock')
  @Post('correct-opened-date')
  correctOpenedDate(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: CorrectOpenedDateDto,
  ): Promise<ContainerChangeView> {
    return this.opening.correct(actor, containerId, dto);
  }

  /** Takes back an opening that was recorded by mistake, while nothing was taken of the bottle. */
  @Needs('handle stock')
  @Post('undo-opening')
  undoOpening(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: UndoOpeningDto,
  ): Promise<ContainerChangeView> {
    return this.opening.undo(actor, containerId, dto);
  }

  /** Records that a bottle is empty; what the book still shows is written off. */
  @Needs('handle stock')
  @Post('finish')
  finish(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: FinishContainerDto,
  ): Promise<ContainerChangeView> {
    return this.ending.finish(actor, containerId, dto);
  }

  /** Throws a bottle or a whole box away. */
  @Needs('handle stock')
  @Post('discard')
  discard(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: DiscardContainerDto,
  ): Promise<ContainerChangeView> {
    return this.ending.discard(actor, containerId, dto);
  }

  /** Throws pieces of a box away. */
  @Needs('handle stock')
  @Post('waste')
  waste(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: WastePiecesDto,
  ): Promise<ContainerChangeView> {
    return this.ending.waste(actor, containerId, dto);
  }

  /** Sends a bottle, a box or some of its pieces back to the supplier. */
  @Needs('handle stock')
  @Post('return')
  giveBack(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: ReturnContainerDto,
  ): Promise<ContainerChangeView> {
    return this.ending.giveBack(actor, containerId, dto);
  }

  /** Keeps what is expired for practice skin; never what is recalled. */
  @Needs('handle stock')
  @Post('keep-for-practice')
  keepForPractice(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: KeepForPracticeDto,
  ): Promise<ContainerChangeView> {
    return this.ending.keepForPractice(actor, containerId, dto);
  }

  /** Counts a box, or looks whether a bottle is still there; the book follows. */
  @Needs('handle stock')
  @Post('count')
  count(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: CountContainerDto,
  ): Promise<ContainerChangeView> {
    return this.counting.count(actor, containerId, dto);
  }

  /** Moves a bottle, a box or some of its pieces to another place or owner. */
  @Needs('handle stock')
  @Post('move')
  move(
    @CurrentActor() actor: Actor,
    @Param('containerId', IdPipe) containerId: string,
    @Body() dto: MoveContainerDto,
  ): Promise<ContainerChangeView> {
    return this.moving.move(actor, containerId, dto);
  }
}
