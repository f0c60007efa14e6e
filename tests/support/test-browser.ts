import type { Answer, ProblemBody } from './service.js';

/** Somebody at a browser, as far as the service can tell: it keeps cookies and sends them back. */
export class TestBrowser {
  private readonly cookies = new Map<string, string>();

  /**
   * @param url of the service
   * @param headers that go with every request
   */
  constructor(
    readonly url: string,
    private readonly headers: Record<string, string> = {},
  ) {}

  /** @param path below `/api/v1` */
  async ask<Body = ProblemBody>(method: string, path: string, body?: unknown): Promise<Answer<Body>> {
    const response = await fetch(`${this.url}/api/v1${path}`, {
      method,
      headers: {
        ...this.headers,
        ...(this.cookies.size > 0 && { cookie: this.cookieHeader }),
        ...(body !== undefined && { 'content-type': 'application/json' }),
      },
      body: body === undefined ? undefined : JSON.stringify(body),
    });
    for (const cookie of response.headers.getSetCookie()) {
      const [, name = '', value = ''] = /^([^=]+)=([^;]*)/.exec(cookie) ?? [];
      if (value === '') this.cookies.delete(name);
      else this.cookies.set(name, value);
    }
    const text = await response.text();
    const isJson = response.headers.get('content-type')?.includes('json') ?? false;
    return {
      status: response.status,
      headers: response.headers,
      body: (isJson && text !== '' ? JSON.parse(text) : text) as Body,
    };
  }

  /** As `ask`, but expects success. */
  async done<Body = unknown>(method: string, path: string, body?: unknown): Promise<Body> {
    const answer = await this.ask<Body>(method, path, body);
    if (answer.status < 300) return answer.body;
    throw new Error(`${method} ${path} was answered ${answer.status}: ${JSON.stringify(answer.body)}`);
  }

  /** Status and code of what is refused; `[status, undefined]` of what is not. */
  async refusal(method: string, path: string, body?: unknown): Promise<[number, string | undefined]> {
    const answer = await this.ask(method, path, body);
    return [answer.status, (answer.body as { code?: string }).code];
  }

  signIn(account: { signInName: string; password: string }): Promise<Answer<ProblemBody>> {
    return this.ask('POST', '/sign-in', account);
  }

  /** Whether somebody is signed in. */
  async isSignedIn(): Promise<boolean> {
    return (await this.ask('GET', '/me')).status === 200;
  }

  cookie(name: string): string | undefined {
    return this.cookies.get(`lotward-${name}`);
  }

  setCookie(name: string, value: string | undefined): void {
    if (value === undefined) this.cookies.delete(`lotward-${name}`);
    else this.cookies.set(`lotward-${name}`, value);
  }

  get cookieHeader(): string {
    return [...this.cookies].map(([name, value]) => `${name}=${value}`).join('; ');
  }

  /**
   * Another browser with the same cookies, as after a theft.
   * @param headers that go with each of its requests beside
   */
  copy(headers: Record<string, string> = {}): TestBrowser {
    const other = new TestBrowser(this.url, { ...this.headers, ...headers });
    for (const [name, value] of this.cookies) other.cookies.set(name, value);
    return other;
  }
}
