/**
 * Bytes that no client library would send: broken HTTP, and what a proxy before the service might read otherwise than the
 * service does (request smuggling, RFC 9112, section 11.2 [M]). Each closes its connection.
 */
export function unreadableRequests(host: string, token: string): [what: string, text: string][] {
  const lines = (...given: string[]) => [...given, '', ''].join('\r\n');
  const path = '/api/v1/me';
  const ask = (...headers: string[]) =>
    lines(
      `GET ${path} HTTP/1.1`,
      `Host: ${host}`,
      `Authorization: Bearer ${token}`,
      ...headers,
      'Connection: close',
    );
  const post = (...headers: string[]) =>
    lines(
      'POST /api/v1/sign-in HTTP/1.1',
      `Host: ${host}`,
      'Content-Type: application/json',
      ...headers,
      'Connection: close',
    );
  return [
    ['no HTTP', 'hello\r\n\r\n'],
    ['TLS', '\u0016\u0003\u0001\u0002\u0000\u0001\u0000\u0001\u00fc\u0003\u0003\r\n\r\n'],
    ['HTTP/0.9', 'GET /\r\n\r\n'],
    ['HTTP/2.0', lines(`GET ${path} HTTP/2.0`, `Host: ${host}`)],
    ['HTTP/9.9', lines(`GET ${path} HTTP/9.9`, `Host: ${host}`)],
    ['a method of its own', lines(`FOO ${path} HTTP/1.1`, `Host: ${host}`)],
    ['a method with a space', lines(`GET POST ${path} HTTP/1.1`, `Host: ${host}`)],
    ['no Host', lines(`GET ${path} HTTP/1.1`, 'Connection: close')],
    ['a space in the address', lines('GET /api/v1/me me HTTP/1.1', `Host: ${host}`)],
    ['NUL in the address', lines('GET /api/v1/\u0000 HTTP/1.1', `Host: ${host}`)],
    ['NUL in a header', ask('X-Strange: a\u0000b')],
    ['a line within a header', ask('X-Strange: a\rb')],
    ['a folded header', ask('X-Strange: a', ' b: c', '\u0001: d')],
    ['a header without a name', ask(': nameless')],
    ['a header with a space before its colon', ask('X-Strange : a')],
    [
      'headers without end',
      ask(...Array.from({ length: 300 }, (_, index) => `X-${index}: ${'x'.repeat(100)}`)),
    ],
    ['one header without end', ask(`X-Long: ${'x'.repeat(20_000)}`)],
    ['two lengths', `${post('Content-Length: 2', 'Content-Length: 4')}{}{}`],
    ['a length and chunks', `${post('Content-Length: 2', 'Transfer-Encoding: chunked')}0\r\n\r\n`],
    ['a negative length', `${post('Content-Length: -1')}{}`],
    ['a length that is no number', `${post('Content-Length: 2x')}{}`],
    ['chunks of a kind of their own', `${post('Transfer-Encoding: chunked, x')}0\r\n\r\n`],
    ['chunks that are none', `${post('Transfer-Encoding: xchunked')}0\r\n\r\n`],
    ['a chunk without end', `${post('Transfer-Encoding: chunked')}fffffffffffffffff\r\n{}\r\n0\r\n\r\n`],
    ['a chunk whose size is no number', `${post('Transfer-Encoding: chunked')}zz\r\n{}\r\n0\r\n\r\n`],
    [
      'lines without carriage return',
      `POST /api/v1/sign-in HTTP/1.1\nHost: ${host}\nContent-Length: 2\nContent-Type: application/json\nConnection: close\n\n{}`,
    ],
    ['an expectation of its own', ask('Expect: 200-ok')],
  ];
}
