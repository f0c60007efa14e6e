import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { gtin14 } from '../../src/catalogue/gs1/check-digit.js';
import type { TrayView } from '../../src/sessions/tray.views.js';
import { hasChromium, startBrowser } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio, receive, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { photoOf, type ShownSymbol, writeFilm } from '../support/symbol-film.js';
import type { Watched } from '../support/watched-page.js';
import { pageOfOwner } from '../support/web-steps.js';

const umberGtin = '09506000134369';
const thinnerGtin = '09506000134376';
const gelGtin = '09506000134383';

const middle = { symbology: 'gs1datamatrix', dotsPerModule: 4, centre: [480, 270] } as const;
const liner: ShownSymbol = {
  ...middle,
  elements: '(01)09506000134352(17)281025(10)CL-2041',
  turned: 23,
  tilted: 25,
  blur: 0.5,
  drift: [60, -25],
};
const umber: ShownSymbol = {
  ...middle,
  symbology: 'gs1qrcode',
  elements: `(01)${umberGtin}(17)200131(10)HU-101`,
  dotsPerModule: 3,
  turned: -12,
  blur: 1,
  drift: [-40, 30],
};
const thinner: ShownSymbol = {
  ...middle,
  elements: `(01)${thinnerGtin}(10)T-1`,
  centre: [300, 220],
  turned: 70,
};
const gel: ShownSymbol = { ...middle, elements: `(01)${gelGtin}(10)G-7(21)9`, centre: [640, 300] };
const separator = '\u001d';

const film = [
  { seconds: 1, symbols: [] },
  { seconds: 1.25, symbols: [liner] },
  { seconds: 0.5, symbols: [] },
  { seconds: 1.25, symbols: [umber] },
  { seconds: 0.5, symbols: [] },
  { seconds: 1.25, symbols: [thinner, gel] },
  { seconds: 1, symbols: [] },
  // Held out at arm's length, in another place: the same blister, or one like it.
  { seconds: 1.25, symbols: [{ ...liner, centre: [560, 200] as const, turned: 200, dotsPerModule: 3 }] },
  { seconds: 5, symbols: [] },
];

/**
 * Marks when the reader has answered with a symbol, and when what it was judged has been painted; counts what was read.
 * It runs before the scripts of the page.
 */
const stopwatch = `(() => {
  globalThis.reads = [];
  const Plain = Worker;
  globalThis.Worker = class extends Plain {
    constructor(...given) {
      super(...given);
      this.addEventListener('message', ({ data }) => {
        globalThis.reads.push({ at: performance.now(), took: performance.now() - this.asked });
        for (const symbol of data.symbols ?? []) performance.mark('decoded ' + symbol);
      });
    }
    postMessage(...given) {
      this.asked = performance.now();
      super.postMessage(...given);
    }
  };
  new MutationObserver(() => {
    const verdict = document.querySelector('[data-verdict]')?.textContent;
    if (!verdict || verdict === globalThis.lastVerdict) return;
    globalThis.lastVerdict = verdict;
    // After the frame that shows it.
    requestAnimationFrame(() => setTimeout(() => performance.mark('verdict ' + verdict)));
  }).observe(document, { subtree: true, childList: true, characterData: true });
})()`;

describe.skipIf(!hasChromium)('the scanner', () => {
  const withDevices = useDevices();
  const folder = mkdtempSync(join(tmpdir(), 'lotward-film-'));
  let service: RunningService;
  let studio: SampleStudio;
  let withCamera: Browser;
  beforeAll(async () => {
    expect([umberGtin, thinnerGtin, gelGtin].map(gtin14)).not.toContain(undefined);
    const file = join(folder, 'shown.y4m');
    writeFilm(file, film);
    withCamera = await startBrowser([
      '--use-fake-device-for-media-stream',
      `--use-file-for-fake-video-capture=${file}`,
    ]);
    service = await startService();
    studio = await makeSampleStudio(service);
    await service.made(`/products/${studio.umberId}/gtins`, { gtin: umberGtin });
    await service.made(`/products/${studio.thinnerId}/gtins`, { gtin: thinnerGtin });
    await service.made(`/products/${studio.gelId}/gtins`, { gtin: gelGtin });
    await receive(service, studio, {
      productId: studio.linerId,
      code: 'CL-2041',
      useBy: '2028-10-25',
      quantity: 5,
    });
    await receive(service, studio, { productId: studio.umberId, code: 'HU-101', useBy: '2020-01-31' });
    await receive(service, studio, { productId: studio.thinnerId, code: 'T-1' });
    await receive(service, studio, { productId: studio.gelId, code: 'G-7' });
  });
  afterAll(async () => {
    await withCamera?.close();
    await service?.dispose();
    rmSync(folder, { recursive: true, force: true });
  });

  /** The tray of a new walk-in, on a device that is signed in. */
  const openTray = async (device: BrowserContext): Promise<Watched & { sessionId: string }> => {
    const sessionId = await walkIn(service, studio);
    const watched = await pageOfOwner(device, service);
    await watched.page.goto(`${service.url}/studios/${service.studioId}/today/trays/${sessionId}`);
    await watched.page.getByRole('heading', { level: 1, name: 'Tray' }).waitFor();
    await watched.page.getByRole('textbox', { name: 'Scan', exact: true }).waitFor();
    return Object.assign(watched, { sessionId });
  };
  /** The symbols that are sent to be judged, in their order. */
  const symbolsSentBy = (page: Page): string[] => {
    const sent: string[] = [];
    page.on('request', (request) => {
      if (request.url().endsWith('/scans')) sent.push(String(request.postDataJSON().symbol));
    });
    return sent;
  };
  /** How many pieces of a lot the service has on a tray. */
  const piecesOf = async (sessionId: string, lotCode: string): Promise<number> => {
    const { lines } = await service.seen<TrayView>(`/sessions/${sessionId}/tray`);
    return lines.filter((line) => line.lotCode === lotCode && line.state === 'on tray').length;
  };

  it('judges each symbol of a moving picture once, in order, and asks before it counts a blister again', async () => {
    const device = await withCamera.newContext({ locale: 'en-GB' });
    await device.addInitScript(stopwatch);
    const watched = await openTray(device);
    const { page, sessionId } = watched;
    const sent = symbolsSentBy(page);
    await device.grantPermissions(['camera']);
    await page.getByRole('button', { name: 'Start the camera' }).click();
    const question = page.locator('[data-verdict=question]');
    await question.waitFor();
    const blister = ']d201095060001343521728102510CL-2041';
    expect(sent).toHaveLength(5);
    expect(sent.slice(0, 2)).toEqual([blister, `]Q301${umberGtin}1720013110HU-101`]);
    expect(sent.slice(2, 4).sort()).toEqual([
      `]d201${thinnerGtin}10T-1`,
      `]d201${gelGtin}10G-7${separator}219`,
    ]);
    expect(sent[4]).toBe(blister);
    expect(await piecesOf(sessionId, 'CL-2041')).toBe(1);
    await question.getByRole('button', { name: /^\+1/ }).click();
    await vi.waitUntil(async () => (await piecesOf(sessionId, 'CL-2041')) === 2);
    expect(sent).toHaveLength(6);

    const measured = await page.evaluate<{
      waits: Record<string, number>;
      perSecond: number;
      took: number;
    }>(`(() => {
      const first = (start, text) => performance.getEntriesByType('mark')
        .find(({ name }) => name.startsWith(start) && name.includes(text)).startTime;
      const took = reads.map((read) => read.took).sort((a, b) => a - b);
      return {
        waits: {
          admitted: first('verdict', 'Fine liner') - first('decoded', 'CL-2041'),
          refused: first('verdict', 'Umber') - first('decoded', 'HU-101'),
        },
        perSecond: (reads.length - 1) / (reads.at(-1).at - reads[0].at) * 1000,
        took: took[Math.floor(took.length / 2)],
      };
    })()`);
    const figures = Object.entries(measured.waits).map(([name, wait]) => `${name} ${Math.round(wait)} ms`);
    process.stdout.write(
      `scanner: ${measured.perSecond.toFixed(1)} pictures a second, half of them read within ${Math.round(measured.took)} ms; from decoded to painted verdict: ${figures.join(', ')}\n`,
    );
    // What an artist is promised; on a machine that does nothing else it is a tenth of that, as the line above shows.
    expect(Math.max(...Object.values(measured.waits))).toBeLessThanOrEqual(1_000);
    watched.expectNoComplaint();

    // Where it was allowed it starts by itself, until it is stopped by hand.
    await page.reload();
    await page.getByText(/^Looking\./).waitFor();
    expect(await faultsEverywhere(page)).toEqual([]);
    await page.getByText('Settings of this device').click();
    await page.getByRole('button', { name: 'Stop the camera' }).click();
    await page.getByRole('button', { name: 'Start the camera' }).waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'Start the camera' }).waitFor();

    // To the end of the job: what the camera saw is what is booked, and as what it was known.
    await page.getByRole('link', { name: 'Finish' }).click();
    await page.getByRole('button', { name: 'Finish and sign' }).click();
    await page.getByRole('heading', { level: 1, name: 'Session finished' }).waitFor();
    const tray = await service.seen<TrayView>(`/sessions/${sessionId}/tray`);
    expect(tray.state).toBe('completed');
    const settled = tray.lines.map(({ lotCode, knownBy, settledAs }) => `${lotCode} ${knownBy} ${settledAs}`);
    expect(settled.filter((line) => line === "CL-2041 maker's symbol used")).toHaveLength(2);
    expect(tray.lines.map(({ lotCode }) => lotCode)).not.toContain('HU-101');
    await device.close();
  });

  it('looks and keeps the screen on only while the page is seen, and says so when the camera is taken away', async () => {
    const device = await withCamera.newContext({ locale: 'en-GB', permissions: ['camera'] });
    await device.addInitScript(`(() => {
      globalThis.awake = 0;
      navigator.wakeLock.request = async () => {
        globalThis.awake += 1;
        return { release: async () => { globalThis.awake -= 1; } };
      };
      globalThis.tracks = [];
      globalThis.asked = [];
      const list = MediaDevices.prototype.enumerateDevices;
      // Another camera, and a lamp beside it, as a tablet has them and this picture has not.
      MediaDevices.prototype.enumerateDevices = async function () {
        const devices = await list.apply(this);
        const [camera] = devices.filter(({ kind }) => kind === 'videoinput');
        return [...devices, { kind: 'videoinput', label: 'Another camera', deviceId: camera.deviceId }];
      };
      MediaStreamTrack.prototype.getCapabilities = () => ({ torch: true });
      MediaStreamTrack.prototype.applyConstraints = async ({ advanced: [{ torch }] }) => {
        globalThis.torch = torch;
      };
      const open = MediaDevices.prototype.getUserMedia;
      MediaDevices.prototype.getUserMedia = async function (...given) {
        globalThis.asked.push(given[0].video.deviceId === undefined ? 'any' : 'a certain one');
        const stream = await open.apply(this, given);
        globalThis.tracks.push(...stream.getTracks());
        return stream;
      };
      let state = 'visible';
      Object.defineProperty(document, 'visibilityState', { get: () => state });
      globalThis.show = (shown) => {
        state = shown;
        document.dispatchEvent(new Event('visibilitychange'));
      };
    })()`);
    const watched = await openTray(device);
    const { page } = watched;
    const picture = page.getByLabel('What the camera sees');
    /** How many cameras are open, and how often the screen is kept on. */
    const active = () =>
      page.evaluate<number[]>(
        `[tracks.filter(({ readyState }) => readyState === 'live').length, globalThis.awake]`,
      );
    await picture.waitFor();
    await vi.waitUntil(async () => (await active()).every((count) => count === 1));
    await page.evaluate("show('hidden')");
    await picture.waitFor({ state: 'detached' });
    expect(await active()).toEqual([0, 0]);
    // A phone hides the page while it takes a photo.
    const buffer = photoOf({ seconds: 1, symbols: [thinner] });
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'taken.png', mimeType: 'image/png', buffer });
    await page.getByText('1 symbol read in the photo.').waitFor();
    await page.evaluate("show('visible')");
    await picture.waitFor();
    await vi.waitUntil(async () => (await active()).every((count) => count === 1));

    // As the browser tells it when the plug is pulled.
    await page.evaluate("tracks.at(-1).stop(); tracks.at(-1).dispatchEvent(new Event('ended'))");
    await page.getByRole('alert').getByText('The camera was unplugged or taken away.').waitFor();
    expect(await active()).toEqual([0, 0]);
    await page.getByRole('button', { name: 'Start the camera again' }).click();
    await picture.waitFor();

    await page.getByRole('button', { name: 'Lamp on' }).click();
    await page.getByRole('button', { name: 'Lamp off' }).waitFor();
    expect(await page.evaluate('torch')).toBe(true);
    await page.getByText('Settings of this device').click();
    await page.getByLabel('Camera', { exact: true }).selectOption('Another camera');
    await page.getByRole('button', { name: 'Lamp on' }).waitFor();
    expect(await page.evaluate('asked.at(-1)')).toBe('a certain one');
    await page.reload();
    await picture.waitFor();
    // It is remembered on this device.
    expect(await page.evaluate('asked')).toEqual(['a certain one']);

    await page.getByRole('link', { name: 'Today' }).first().click();
    await page.getByRole('heading', { level: 1, name: 'Today' }).waitFor();
    expect(await active()).toEqual([0, 0]);
    watched.expectNoComplaint();
    await device.close();
  });

  it('says what to do when the camera is not allowed, in use or needs HTTPS, or the reader is not there', async () => {
    // What the app keeps on the device would hide that the network fails.
    const device = await withCamera.newContext({ locale: 'en-GB', serviceWorkers: 'block' });
    const { page } = await openTray(device);
    const fault = page.getByRole('alert');
    const again = page.getByRole('button', { name: 'Start the camera again' });
    await page.getByRole('button', { name: 'Start the camera' }).click();
    await fault.getByText(/not allowed here\..* allow the camera, and start again/).waitFor();
    await fault.getByText('A hand-held scanner, a photo and typing work all the same.').waitFor();
    expect(await faultsEverywhere(page)).toEqual([]);

    await page.evaluate(`MediaDevices.prototype.getUserMedia = () =>
      Promise.reject(new DOMException('Could not start video source', 'NotReadableError'))`);
    await again.click();
    await fault.getByText(/another program may be using it/).waitFor();

    await device.grantPermissions(['camera']);
    await page.route('**/zxing_reader*', (route) => route.abort());
    await page.reload();
    await fault.getByText(/The part that reads symbols could not be loaded/).waitFor();
    await page.unroute('**/zxing_reader*');
    await again.click();
    await page.locator('[data-verdict]').waitFor();

    // As on a page that came by plain HTTP from another machine.
    await device.addInitScript(`Object.defineProperty(globalThis, 'isSecureContext', { value: false });
      Object.defineProperty(navigator, 'mediaDevices', { value: undefined });`);
    await page.reload();
    await fault.getByText(/make-local-certificate/).waitFor();
    await device.close();
  });

  it('works without a camera: by photo, and by a scanner that types', () =>
    withDevices(async (device) => {
      await device.addInitScript(`(() => {
        globalThis.tones = [];
        const Plain = OscillatorNode;
        globalThis.OscillatorNode = class extends Plain {
          constructor(context, options) {
            super(context, options);
            globalThis.tones.push(options.frequency);
          }
        };
      })()`);
      const watched = await openTray(device);
      const { page, sessionId } = watched;
      const sent = symbolsSentBy(page);
      await page.getByRole('button', { name: 'Start the camera' }).click();
      await page.getByRole('alert').getByText('No camera was found.').waitFor();

      // Nothing of the reader is loaded before there is something to read.
      expect(watched.requested.filter((address) => /decoder|zxing/.test(address))).toEqual([]);

      const show = async (name: string, buffer: Buffer) => {
        await page.locator('input[type=file]').setInputFiles({ name, mimeType: 'image/png', buffer });
      };
      await show('table.png', photoOf({ seconds: 1, symbols: [] }));
      await page.getByText(/^No symbol could be read in the photo\. .* or type the lot/).waitFor();
      await show('note.png', Buffer.from('This is no picture.'));
      await page.getByText(/^This file is no picture/).waitFor();
      expect(sent).toEqual([]);
      await show('tray.png', photoOf({ seconds: 1, symbols: [thinner, gel] }));
      await page.getByText('2 symbols read in the photo.').waitFor();
      for (const code of ['T-1', 'G-7']) {
        await vi.waitUntil(async () => (await piecesOf(sessionId, code)) === 1);
      }

      // Nothing is focused that could be typed into, as after pressing a button.
      const scan = page.getByRole('textbox', { name: 'Scan', exact: true });
      const typeWith = async (typeSeparator: () => Promise<void>) => {
        await page.evaluate('document.activeElement.blur()');
        await page.keyboard.type(`]d201${umberGtin}10HU-101`);
        await typeSeparator();
        await page.keyboard.type('17200131');
        await page.keyboard.press('Enter');
        await vi.waitUntil(async () => (await scan.inputValue()) === '');
        return sent.at(-1);
      };
      const typed = `]d201${umberGtin}10HU-101${separator}17200131`;
      expect(await typeWith(() => page.keyboard.press('Control+BracketRight'))).toBe(typed);
      await page.locator('[data-verdict=refused]').waitFor();
      expect(await typeWith(() => page.keyboard.press('F8'))).toBe(typed);
      expect(
        await typeWith(async () => {
          await page.keyboard.down('Alt');
          for (const digit of '029') await page.keyboard.press(`Numpad${digit}`);
          await page.keyboard.up('Alt');
        }),
      ).toBe(typed);

      await page.getByText('Settings of this device').click();
      const substitute = page.getByLabel('Your scanner types this for the separator GS');
      await substitute.fill('7');
      await page.getByText(/^A sign that symbols hold themselves/).waitFor();
      await substitute.fill('~');
      expect(await typeWith(() => page.keyboard.type('~'))).toBe(typed);
      expect(sent).toHaveLength(6);

      // What is typed into another field stays there.
      await substitute.fill('');
      await substitute.pressSequentially('|');
      expect([await substitute.inputValue(), await scan.inputValue()]).toEqual(['|', '']);
      // It sounds only when that is chosen, and differently for each verdict.
      expect(await page.evaluate('tones')).toEqual([]);
      await page.getByLabel('A short sound at each verdict').check();
      await vi.waitUntil(async () => (await page.evaluate<number[]>('tones')).length > 0);
      await substitute.blur();
      await page.keyboard.type(`]d201${umberGtin}10HU-101`);
      await page.keyboard.press('Enter');
      await vi.waitUntil(async () => (await page.evaluate<number[]>('tones')).length > 2);
      expect(await page.evaluate('tones')).toEqual([660, 990, 330, 247, 185]);
      expect(await faultsEverywhere(page)).toEqual([]);
      watched.expectNoComplaint();
    }));
});
