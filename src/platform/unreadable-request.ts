import type { Socket } from 'node:net';
import { problemDocument } from './problem.filter.js';
import { Problem } from './problem.js';

const refusals: Record<string, [status: number, reason: string, detail: string]> = {
  HPE_HEADER_OVERFLOW: [
    431,
    'Request Header Fields Too Large',
    'The address and the headers are too long together. Send less.',
  ],
  UNKNOWN_EXPECTATION: [
    417,
    'Expectation Failed',
    'The header Expect asks for something else than 100-continue. Leave it out.',
  ],
  ERR_HTTP_REQUEST_TIMEOUT: [408, 'Request Timeout', 'The request did not arrive in time. Send it again.'],
};

/** Answers what cannot be read as HTTP; there is no request yet, so it is written to the connection itself. */
export function refuseUnreadable(error: Error & { code?: string }, socket: Socket): void {
  if (error.code === 'ECONNRESET' || !socket.writable) {
    socket.destroy();
    return;
  }
  const [status, reason, detail] = refusals[error.code ?? ''] ?? [
    400,
    'Bad Request',
    'What was sent is not HTTP. Look at what made it.',
  ];
  const body = JSON.stringify(problemDocument(new Problem(status, 'malformed-request', detail)));
  socket.end(
    [
      `HTTP/1.1 ${status} ${reason}`,
      'Content-Type: application/problem+json; charset=utf-8',
      `Content-Length: ${Buffer.byteLength(body)}`,
      'Cache-Control: no-store',
      'X-Content-Type-Options: nosniff',
      'Connection: close',
      '',
      body,
    ].join('\r\n'),
  );
}

/** Answers a request that expects what nobody here knows: Node would refuse it without a word. */
export function refuseExpectation({ socket }: { socket: Socket }): void {
  refuseUnreadable(Object.assign(new Error('unknown expectation'), { code: 'UNKNOWN_EXPECTATION' }), socket);
}
