import { Controller, Get } from '@nestjs/common';
import { ApiTags } from '@nestjs/swagger';
import { QueueHealth } from '../../alerts/queue/queue-health.service.js';
import { OpenToAnyone } from '../../identity/needs.decorator.js';
import { Problem } from '../../platform/problem.js';
import { LiveView, ReadyView } from './health.views.js';
import { Readiness } from './readiness.service.js';

/** For whatever keeps the service running; what is wrong stands in the log, since anybody may ask here. */
@ApiTags('health')
@Controller('health')
export class HealthController {
  constructor(
    private readonly readiness: Readiness,
    private readonly queue: QueueHealth,
  ) {}

  /** Whether the process answers at all. */
  @OpenToAnyone()
  @Get('live')
  live(): LiveView {
    return { status: 'live' };
  }

  /**
   * Whether the service can work; 503 when it cannot, and while it ends. A queue that fails keeps nobody from working:
   * what it is to carry waits in the record.
   */
  @OpenToAnyone()
  @Get('ready')
  async ready(): Promise<ReadyView> {
    if (await this.readiness.isReady()) {
      return { status: 'ready', failing: (await this.queue.isWell()) ? [] : ['queue'] };
    }
    throw new Problem(
      503,
      'not-ready',
      'The service cannot work at this moment: it is ending, or its database does not answer. Its log says why.',
    );
  }
}
