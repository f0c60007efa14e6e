import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { rawRequest } from '../support/raw-http.js';
import { type RunningService } from '../support/service.js';
import { startStudio } from '../support/shared-service.js';

describe('the web app, as it is served', () => {
  let service: RunningService;
  beforeAll(async () => {
    service = await startStudio('sqlite');
  });
  afterAll(() => service.dispose());

  const get = (path: string, init: RequestInit = {}) => fetch(service.url + path, init);

  it.each(['/', '/sign-in', '/set-up', '/studios/1/people', '/apiary', '/nowhere?x=1'])(
    'is one page at %s, which nobody keeps',
    async (path) => {
      const answer = await get(path);
      expect(answer.status).toBe(200);
      expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
      expect(answer.headers.get('cache-control')).toBe('no-store');
      expect(await answer.text()).toContain('<div id="root"></div>');
    },
  );

  it('has files that are kept for good, for their names change with their content', async () => {
    const page = await (await get('/')).text();
    const files = [...page.matchAll(/(?:src|href)="(\/assets\/[^"]+)"/g)].map(([, file]) => file ?? '');
    expect(files.some((file) => file.endsWith('.js'))).toBe(true);
    expect(files.some((file) => file.endsWith('.css'))).toBe(true);
    for (const file of files) {
      const answer = await get(file);
      expect(answer.status).toBe(200);
      expect(file).toMatch(/^\/assets\/.+-[\w-]{8}\.\w+$/);
      expect(answer.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
    }
  });

  it('goes over the network compressed, at most 250 kB before the first page of work stands', async () => {
    const asked = new Set<string>();
    let bytes = 0;
    const take = async (file: string) => {
      if (asked.has(file)) return;
      asked.add(file);
      const answer = await rawRequest(service.url, {
        path: file,
        headers: { host: 'localhost', 'accept-encoding': 'gzip' },
      });
      expect([file, answer.headers['content-encoding']]).toEqual([file, 'gzip']);
      bytes += Number(answer.headers['content-length']);
      // What it imports at once; what is loaded when it is needed is imported by a call.
      const source = await (await get(file)).text();
      for (const [, name] of source.matchAll(/(?:from|^import|;import)\s*"\.\/([^"]+)"/g)) {
        await take(`/assets/${name}`);
      }
    };
    const page = await (await get('/')).text();
    const first = [...page.matchAll(/(?:src|href)="(\/assets\/[^"]+\.(?:js|css))"/g)].map(
      ([, file]) => file ?? '',
    );
    const worker = await (await get('/service-worker.js')).text();
    const today = [...worker.matchAll(/"(\/assets\/today-pages-[^"]+)"/g)].map(([, file]) => file ?? '');
    expect(today.length).toBeGreaterThan(0);
    for (const file of [...first, ...today]) await take(file);
    expect(bytes).toBeGreaterThan(100_000);
    expect(bytes).toBeLessThanOrEqual(250_000);
  });

  it('can be put on a device: with a manifest, its pictures, and a script that keeps every file', async () => {
    const manifest = await get('/manifest.webmanifest');
    expect(manifest.headers.get('content-type')).toContain('application/manifest+json');
    const { icons, start_url: start } = (await manifest.json()) as {
      icons: { src: string; sizes: string }[];
      start_url: string;
    };
    expect(start).toBe('/');
    // What browsers ask for before they offer to install an app [S].
    expect(icons.map(({ sizes }) => sizes)).toEqual(expect.arrayContaining(['192x192', '512x512']));
    for (const { src } of icons) {
      expect((await get(src)).headers.get('content-type')).toBe('image/png');
    }
    const worker = await get('/service-worker.js');
    expect(worker.headers.get('cache-control')).toBe('no-cache');
    expect(worker.headers.get('content-type')).toContain('javascript');
    const files = [...(await worker.text()).matchAll(/"(\/assets\/[^"]+)"/g)].map(([, file]) => file ?? '');
    expect(files.some((file) => file.endsWith('.wasm'))).toBe(true);
    for (const file of files) expect((await get(file)).status).toBe(200);
  });

  it.each([
    '/api',
    '/api/',
    '/api/v1/nothing',
    '/api/v1/../../etc/passwd',
    '/health',
    '/health/nothing',
    '/assets/',
    '/icons/',
    '/icons/none.png',
    '/assets/index-00000000.js',
    '/assets/../index.html',
    '/assets/..%2findex.html',
  ])('is not what is answered at %s', async (path) => {
    const answer = await rawRequest(service.url, { path, headers: { host: 'localhost' } });
    expect(answer.status).toBeGreaterThanOrEqual(400);
    expect(answer.status).toBeLessThan(500);
    expect(answer.headers['content-type']).toContain('application/problem+json');
  });

  it('is looked at without being fetched, and written to by nobody', async () => {
    const head = await get('/', { method: 'HEAD' });
    expect([head.status, await head.text()]).toEqual([200, '']);
    const post = await get('/', { method: 'POST' });
    expect(post.status).toBe(404);
  });

  it('lets in styles that show the nonce of this very answer, and no script but its own files', async () => {
    const seen = new Set<string>();
    for (let time = 0; time < 3; time += 1) {
      const answer = await get('/');
      const policy = answer.headers.get('content-security-policy') ?? '';
      const nonce = /<meta property="csp-nonce" nonce="([A-Za-z0-9+/=]{24})"/.exec(await answer.text())?.[1];
      expect(policy.split(';')).toContain(`style-src 'self' 'nonce-${nonce}'`);
      expect(policy.split(';')).toContain("script-src 'self'");
      expect(policy).not.toContain('unsafe');
      seen.add(String(nonce));
    }
    expect(seen.size).toBe(3);
  });

  it('has a page without any script or style of its own in it', async () => {
    const page = await (await get('/')).text();
    expect(page).not.toMatch(/<style|<script(?![^>]*\bsrc=)|\son\w+=|\sstyle=/i);
  });
});
