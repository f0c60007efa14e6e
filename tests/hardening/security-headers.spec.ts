import { readdirSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium, withBrowser } from '../support/chromium.js';
import { rawRequest } from '../support/raw-http.js';
import { type RunningService, startService } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';

/** The directives of a Content-Security-Policy. */
function directives(policy: string | string[] | undefined): Map<string, string> {
  return new Map(
    String(policy)
      .split(';')
      .map((directive) => {
        const [name = '', ...sources] = directive.trim().split(' ');
        return [name, sources.join(' ')];
      }),
  );
}

// OWASP ASVS 5.0, 3.4.1 to 3.4.6, 13.4.6 and 14.3.2 [P]; OWASP HTTP Headers Cheat Sheet [M].
describe('the security headers', () => {
  let service: RunningService;
  let secure: RunningService;
  beforeAll(async () => {
    service = await startStudio('sqlite');
    secure = await startService('sqlite', {
      environment: { PUBLIC_URL: 'https://lotward.studio.example', TRUST_PROXY: '127.0.0.1' },
    });
  });
  afterAll(async () => {
    await service.dispose();
    await secure.dispose();
  });

  const answers: [string, string, Record<string, string>][] = [
    ['a good answer', '/health/live', {}],
    ['an answer with data', '/api/v1/studios', {}],
    ['a refusal', '/api/v1/studios/x/people', {}],
    ['nothing there', '/api/v1/nothing', {}],
    ['an address that cannot be read', '/api/v1/%zz', {}],
    ['a refused host', '/health/live', { host: 'attacker.example' }],
    ['a refused page', '/api/v1/studios', { 'sec-fetch-site': 'cross-site' }],
    ['the page of the API', '/api/docs', {}],
  ];

  it.each(answers)('are on %s', async (_, path, headers) => {
    const method = headers['sec-fetch-site'] === undefined ? 'GET' : 'POST';
    const answer = await rawRequest(service.url, {
      path,
      method,
      headers: { host: 'localhost', ...headers },
    });
    const policy = directives(answer.headers['content-security-policy']);
    expect(policy.get('default-src')).toBe("'none'");
    expect(policy.get('object-src')).toBe("'none'");
    expect(policy.get('base-uri')).toBe("'none'");
    expect(policy.get('frame-ancestors')).toBe("'none'");
    expect(policy.get('form-action')).toBe("'self'");
    expect(policy.get('script-src')).toBe("'self'");
    expect(policy.get('worker-src')).toBe("'self'");
    expect(answer.headers).toMatchObject({
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'cross-origin-opener-policy': 'same-origin',
      'cross-origin-resource-policy': 'same-origin',
      'permissions-policy': expect.stringContaining('camera=(self)'),
    });
    expect(answer.headers).not.toHaveProperty('server');
    expect(answer.headers).not.toHaveProperty('x-powered-by');
    expect(answer.headers).not.toHaveProperty('strict-transport-security');
  });

  it('let a worker compile WebAssembly, which the reader of symbols is, and no page', async () => {
    const files = readdirSync(new URL('../../dist/web/assets', import.meta.url));
    const worker = files
      .filter((file) => file.includes('.worker-') && file.endsWith('.js'))
      .map((file) => `/assets/${file}`);
    const script = files.filter((file) => /^index-.*\.js$/.test(file)).map((file) => `/assets/${file}`);
    expect([worker.length, script.length]).toEqual([1, 1]);
    const scriptsOf = async (path: string) => {
      const answer = await rawRequest(service.url, { path, headers: { host: 'localhost' } });
      expect(answer.status).toBe(200);
      return directives(answer.headers['content-security-policy']).get('script-src');
    };
    expect(await scriptsOf(String(worker[0]))).toBe("'self' 'wasm-unsafe-eval'");
    for (const path of [String(script[0]), '/', '/api/docs']) expect(await scriptsOf(path)).toBe("'self'");
  });

  it('insist on HTTPS for a year where people come by HTTPS', async () => {
    const { headers } = await rawRequest(secure.url, {
      path: '/health/live',
      headers: { host: 'lotward.studio.example' },
    });
    expect(headers['strict-transport-security']).toBe('max-age=31536000; includeSubDomains');
  });

  it('keep what the API answers out of every cache', async () => {
    for (const path of ['/people', '/people?limit=0', '/nothing']) {
      expect((await service.get(path)).headers.get('cache-control')).toBe('no-store');
    }
    expect((await fetch(`${service.url}/api/v1/studios`)).headers.get('cache-control')).toBe('no-store');
  });

  it.skipIf(!hasChromium)('let the page of the API be shown, and nothing on it be refused', async () => {
    await withBrowser(async (browser) => {
      const page = await browser.newPage();
      const complaints: string[] = [];
      page.on('console', (message) => {
        if (message.type() === 'error') complaints.push(message.text());
      });
      page.on('pageerror', (error) => complaints.push(error.message));
      await page.goto(`${service.url}/api/docs`);
      // It draws what is in sight: the first operation, opened, and further ones below.
      await page.locator('.opblock-summary').first().click();
      await page.locator('.opblock-body').first().waitFor();
      await page.mouse.wheel(0, 3_000);
      await page.locator('.opblock').nth(5).waitFor();
      expect(complaints).toEqual([]);
    });
  });

  it.skipIf(!hasChromium)('keep a browser from running or showing what another site sends it', async () => {
    await withBrowser(async (browser) => {
      const page = await browser.newPage();
      await page.goto(`${service.url}/health/live`);
      // The answer is a page of this origin: what it may do is what its policy says.
      const ran = await page.evaluate<{ injected: boolean; fetched: string }>(`(async () => {
        const script = document.createElement('script');
        script.textContent = 'globalThis.injected = true';
        document.body.append(script);
        const fetched = await fetch('http://localhost:1/').then(() => 'fetched', () => 'refused');
        return { injected: globalThis.injected === true, fetched };
      })()`);
      expect(ran).toEqual({ injected: false, fetched: 'refused' });
    });
  });
});
