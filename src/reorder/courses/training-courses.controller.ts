import { Body, Controller, Get, Param, Patch, Post, Query } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { CurrentActor } from '../../identity/actor.guard.js';
import { Needs } from '../../identity/needs.decorator.js';
import type { Actor } from '../../platform/actor.js';
import { IdPipe } from '../../platform/id.pipe.js';
import {
  AddTrainingCourseDto,
  CancelTrainingCourseDto,
  ChangeTrainingCourseDto,
  TrainingCoursePageDto,
} from './training-courses.dto.js';
import { TrainingCourses } from './training-courses.service.js';
import { TrainingCoursePageView, TrainingCourseView } from './training-courses.views.js';

/** Booked training courses: what they need is known beforehand. */
@ApiTags('reorder')
@Controller('v1/studios/:studioId/training-courses')
export class TrainingCoursesController {
  constructor(private readonly courses: TrainingCourses) {}

  /** A page of courses from a day on, the earliest first. */
  @Needs('read plans')
  @Get()
  list(@CurrentActor() actor: Actor, @Query() page: TrainingCoursePageDto): Promise<TrainingCoursePageView> {
    return this.courses.list(actor, page);
  }

  /** Books a course. */
  @Needs('plan orders')
  @Post()
  add(@CurrentActor() actor: Actor, @Body() dto: AddTrainingCourseDto): Promise<TrainingCourseView> {
    return this.courses.add(actor, dto);
  }

  /** Changes what is known of it. */
  @Needs('plan orders')
  @Patch(':courseId')
  change(
    @CurrentActor() actor: Actor,
    @Param('courseId', IdPipe) courseId: string,
    @Body() dto: ChangeTrainingCourseDto,
  ): Promise<TrainingCourseView> {
    return this.courses.change(actor, courseId, dto);
  }

  /** It does not take place. */
  @Needs('plan orders')
  @Post(':courseId/cancel')
  cancel(
    @CurrentActor() actor: Actor,
    @Param('courseId', IdPipe) courseId: string,
    @Body() dto: CancelTrainingCourseDto,
  ): Promise<TrainingCourseView> {
    return this.courses.cancel(actor, courseId, dto);
  }
}
