import { Injectable } from '@nestjs/common';
import { localDay } from '../../identity/local-day.js';
import type { Actor } from '../../platform/actor.js';
import { Clock } from '../../platform/clock.js';
import { Database, type Read, type SqlValue } from '../../platform/database/database.js';
import type { Transaction } from '../../platform/database/transaction.js';
import { Transactions } from '../../platform/database/transactions.js';
import { defaultPageSize, pageOf, refuseUnknownStart } from '../../platform/page.js';
import { faultsProblem, notFound, Problem } from '../../platform/problem.js';
import { courseDayFault } from './course-day.js';
import { TrainingCourse } from './training-course.entity.js';
import type {
  AddTrainingCourseDto,
  CancelTrainingCourseDto,
  ChangeTrainingCourseDto,
  TrainingCoursePageDto,
} from './training-courses.dto.js';
import type { TrainingCoursePageView, TrainingCourseView } from './training-courses.views.js';

const columns = `training_course.id, training_course.procedure_id AS "procedureId", procedure.name AS "procedureName",
  training_course.held_on AS "heldOn", training_course.trainees, training_course.reference, training_course.version,
  training_course.created_at AS "createdAt", training_course.cancelled_at AS "cancelledAt"`;
const tables = `training_course JOIN procedure
  ON procedure.studio_id = training_course.studio_id AND procedure.id = training_course.procedure_id`;

/** Booked training courses. Each needs the kit list of its procedure once for each trainee. */
@Injectable()
export class TrainingCourses {
  constructor(
    private readonly database: Database,
    private readonly transactions: Transactions,
    private readonly clock: Clock,
  ) {}

  /** From a day on, the earliest first. */
  async list(actor: Actor, dto: TrainingCoursePageDto): Promise<TrainingCoursePageView> {
    const { from = localDay(this.clock.now(), actor.timeZone), state = 'booked' } = dto;
    const { limit = defaultPageSize, after } = dto;
    await refuseUnknownStart(this.database.read, 'training_course', actor.studioId, after);
    const parameters: SqlValue[] = [actor.studioId, from];
    let onwards = '';
    if (after !== undefined) {
      parameters.push(after);
      onwards = `AND (training_course.held_on, training_course.id) > (
        SELECT held_on, id FROM training_course AS last WHERE last.studio_id = $1 AND last.id = $3)`;
    }
    const rows = await this.database.read<TrainingCourseView>(
      `SELECT ${columns} FROM ${tables}
       WHERE training_course.studio_id = $1 AND training_course.held_on >= $2
         ${state === 'booked' ? 'AND training_course.cancelled_at IS NULL' : ''} ${onwards}
       ORDER BY training_course.held_on, training_course.id LIMIT ${limit + 1}`,
      parameters,
    );
    const { shown, next } = pageOf(rows, limit, ({ id }) => id);
    return { items: shown, next };
  }

  /** @throws Problem not-found; unusable-date; wrong-state when the procedure is no longer offered */
  add(actor: Actor, dto: AddTrainingCourseDto): Promise<TrainingCourseView> {
    return this.write(actor, 'book', dto.id, dto, async (transaction) => {
      const { id, procedureId, heldOn, trainees, reference = null } = dto;
      await requireOffered(transaction, procedureId);
      refuseUnusableDay(transaction, heldOn);
      const { studioId, recordedAt } = transaction;
      await transaction.insert(TrainingCourse, {
        ...{ studioId, id, procedureId, heldOn, trainees, reference },
        version: 1,
        createdAt: recordedAt,
        cancelledAt: null,
      });
    });
  }

  /** @throws Problem not-found; unusable-date; wrong-state when it was cancelled; stale-version */
  change(actor: Actor, id: string, dto: ChangeTrainingCourseDto): Promise<TrainingCourseView> {
    return this.write(actor, 'change', id, dto, async (transaction) => {
      const { id: _, version, ...changes } = dto;
      const present = await open(transaction, id);
      const { procedureId, heldOn } = changes;
      if (procedureId !== undefined && procedureId !== present.procedureId) {
        await requireOffered(transaction, procedureId);
      }
      // What is over may still be corrected.
      if (heldOn !== undefined && heldOn !== present.heldOn) refuseUnusableDay(transaction, heldOn);
      const key = { studioId: transaction.studioId, id };
      await transaction.change(TrainingCourse, 'training course', key, version, changes);
      transaction.note({ fields: Object.keys(changes) });
    });
  }

  /** @throws Problem not-found; wrong-state when it was cancelled already; stale-version */
  cancel(actor: Actor, id: string, dto: CancelTrainingCourseDto): Promise<TrainingCourseView> {
    return this.write(actor, 'cancel', id, dto, async (transaction) => {
      await open(transaction, id);
      const { studioId, recordedAt } = transaction;
      const key = { studioId, id };
      await transaction.change(TrainingCourse, 'training course', key, dto.version, {
        cancelledAt: recordedAt,
      });
    });
  }

  private write(
    actor: Actor,
    verb: string,
    courseId: string,
    dto: { id: string },
    work: (transaction: Transaction) => Promise<void>,
  ): Promise<TrainingCourseView> {
    return this.transactions.write(
      actor,
      {
        id: dto.id,
        action: `reorder.${verb}-training-course`,
        subject: { kind: 'training course', id: courseId },
        content: { ...dto, courseId },
      },
      async (transaction) => {
        // One change at a time: whether it was cancelled is read before it is written.
        await transaction.lockStudio();
        await work(transaction);
        return this.view(transaction.read, actor, courseId);
      },
    );
  }

  private async view(read: Read, { studioId }: Actor, id: string): Promise<TrainingCourseView> {
    const [view] = await read<TrainingCourseView>(
      `SELECT ${columns} FROM ${tables} WHERE training_course.studio_id = $1 AND training_course.id = $2`,
      [studioId, id],
    );
    if (!view) throw notFound('training course', id);
    return view;
  }
}

async function open(transaction: Transaction, id: string): Promise<TrainingCourse> {
  const found = await transaction.manager.findOneBy(TrainingCourse, { studioId: transaction.studioId, id });
  if (!found) throw notFound('training course', id);
  if (found.cancelledAt === null) return found;
  throw new Problem(
    409,
    'wrong-state',
    `This course was cancelled on ${found.cancelledAt}. Book another one if it takes place after all.`,
  );
}

/** @throws Problem not-found, wrong-state */
async function requireOffered(transaction: Transaction, procedureId: string): Promise<void> {
  const [procedure] = await transaction.query<{ name: string; archivedAt: string | null }>(
    'SELECT name, archived_at AS "archivedAt" FROM procedure WHERE studio_id = $1 AND id = $2',
    [transaction.studioId, procedureId],
  );
  if (!procedure) throw notFound('procedure', procedureId);
  if (procedure.archivedAt === null) return;
  throw new Problem(
    409,
    'wrong-state',
    `"${procedure.name}" is no longer offered. Choose another procedure, or offer it again first.`,
  );
}

/** @throws Problem unusable-date */
function refuseUnusableDay({ recordedAt, actor }: Transaction, heldOn: string): void {
  const message = courseDayFault(heldOn, localDay(recordedAt, actor.timeZone));
  if (message !== null) throw faultsProblem([{ field: 'heldOn', message, code: 'unusable-date' }]);
}
