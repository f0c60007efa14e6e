import { describe, expect, it } from 'vitest';
import { makeLog } from './log.js';
import { NestLog } from './nest-log.js';

function record(level: 'error' | 'warn' | 'log' | 'debug' = 'debug') {
  const lines: string[] = [];
  const log = makeLog({ LOG_LEVEL: level }, { write: (line: string) => lines.push(line) });
  return { log, text: () => lines.join(''), objects: () => lines.map((line) => JSON.parse(line)) };
}

describe('the log', () => {
  it('is one JSON object a line, with level, time in UTC and message', () => {
    const { log, objects } = record();
    log.info({ studioId: 'x' }, 'something\nhappened');
    expect(objects()).toEqual([
      {
        level: 'info',
        time: expect.stringMatching(/^\d{4}-\d\d-\d\dT[\d:.]+Z$/),
        studioId: 'x',
        msg: 'something\nhappened',
      },
    ]);
  });

  it.each([
    'authorization',
    'cookie',
    'set-cookie',
    'password',
    'secret',
    'token',
    'name',
    'contact',
    'note',
    'text',
  ])('withholds %s, wherever it stands', (member) => {
    const { log, text, objects } = record();
    log.info({ [member]: 'Nora Feld' });
    log.warn({ client: { [member]: 'Nora Feld' }, kept: 'plain' });
    log.error({ request: { headers: { [member]: 'Nora Feld' } } });
    expect(text()).not.toContain('Nora Feld');
    expect(objects()).toMatchObject([{}, { kept: 'plain' }, {}]);
  });

  it('tells what an error is and where it came from, but not what hangs on it', () => {
    const { log, text, objects } = record();
    const error = Object.assign(new Error('no such table'), {
      parameters: ['Nora Feld'],
      driverError: { detail: 'Key (name)=(Nora Feld) already exists.' },
    });
    log.error({ err: error }, 'failed');
    expect(text()).not.toContain('Nora Feld');
    expect(objects()[0].err).toMatchObject({
      type: 'Error',
      message: 'no such table',
      stack: expect.any(String),
    });
  });

  it('holds what is at the level that was asked for, or above', () => {
    const { log, objects } = record('warn');
    log.debug('one');
    log.info('two');
    log.warn('three');
    log.error('four');
    expect(objects().map(({ msg }) => msg)).toEqual(['three', 'four']);
  });

  it('takes in what rooms say, with the name of the room', () => {
    const { log, objects } = record();
    const nest = new NestLog(log);
    nest.log('a studio was made', 'first start');
    nest.warn('low stock', 'alert');
    nest.error('it broke', 'Error: it broke\n    at somewhere', 'trace');
    nest.error(new Error('broken'), 'trace');
    nest.log('Mapped a route', 'RouterExplorer');
    nest.log({ count: 3 }, 'sweep');
    expect(objects()).toMatchObject([
      { level: 'info', room: 'first start', msg: 'a studio was made' },
      { level: 'warn', room: 'alert', msg: 'low stock' },
      { level: 'error', room: 'trace', msg: 'it broke', stack: expect.stringContaining('somewhere') },
      { level: 'error', room: 'trace', msg: 'broken', err: { message: 'broken' } },
      { level: 'debug', room: 'RouterExplorer' },
      { level: 'info', room: 'sweep', count: 3 },
    ]);
  });
});
