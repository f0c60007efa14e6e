import { v7 as uuidv7 } from 'uuid';
import { type Answer, RunningService } from '../service.js';

/** A request as it was sent, with its answer. */
export interface SentRequest {
  method: string;
  /** Whole. */
  address: string;
  body: unknown;
  answer: Answer;
}

/** A studio of a running service that remembers what was asked of it. */
export class RecordingService extends RunningService {
  readonly sent: SentRequest[] = [];

  /** Called before a write is made, when everything is as the write finds it. */
  beforeWrite: ((method: string, address: string, body: unknown) => Promise<void>) | undefined;

  /** @param studio another studio of the service, with a token that is good there; left out: the one of the tests */
  static on(
    service: RunningService,
    studio: { studioId: string; token: string } = service,
  ): RecordingService {
    const { url, dataFolder, databaseUrl, child, log } = service;
    return new RecordingService(url, dataFolder, databaseUrl, child, log, studio.studioId, studio.token);
  }

  override async send<Body>(
    method: string,
    path: string,
    body?: unknown,
    headers?: Record<string, string>,
  ): Promise<Answer<Body>> {
    const address = path.startsWith('http') ? path : this.studio + path;
    // As it goes out: what is undefined is left out.
    const given: unknown = typeof body === 'object' ? JSON.parse(JSON.stringify(body)) : body;
    if (method !== 'GET') await this.beforeWrite?.(method, address, given);
    const answer = await super.send<Body>(method, path, given, headers);
    this.sent.push({ method, address, body: given, answer });
    return answer;
  }

  /** As `made`, for changes and replacements. */
  async changed<Body>(method: 'PATCH' | 'PUT' | 'DELETE', path: string, body: object): Promise<Body> {
    const answer = await this.send<Body>(method, path, { id: uuidv7(), ...body });
    if (answer.status >= 300) {
      throw new Error(`${method} ${path} was answered ${answer.status}: ${JSON.stringify(answer.body)}`);
    }
    return answer.body;
  }
}
