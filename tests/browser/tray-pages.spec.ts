import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { makeSampleStudio, receive, type SampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { goTo, openAsOwner } from '../support/web-steps.js';

describe.skipIf(!hasChromium)('laying a tray on the pages', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let studio: SampleStudio;
  beforeAll(async () => {
    service = await startService();
    studio = await makeSampleStudio(service);
    await receive(service, studio, { productId: studio.umberId, code: 'OLD-1', useBy: '2020-01-31' });
    await receive(service, studio, { productId: studio.umberId, code: 'HU-118' });
    await receive(service, studio, { productId: studio.gelId, code: 'HU-119' });
    for (const code of ['T-1', 'T-2', 'T-3']) {
      await receive(service, studio, { productId: studio.thinnerId, code });
    }
    await receive(service, studio, { productId: studio.linerId, code: 'CL-9', quantity: 3 });
    await service.made('/sessions', {
      clientId: studio.clientId,
      artistId: studio.ownerId,
      procedureId: studio.procedureId,
      visitKind: 'first session',
      plannedStart: new Date().toISOString(),
    });
  });
  afterAll(() => service.dispose());

  it('says by word, at once and without a press between scans, what may be used and what to take instead', () =>
    withDevices(async (browser) => {
      const watched = await openAsOwner(browser, service);
      const { page } = watched;
      await goTo(page, 'Today');
      // A name is nothing to be read from the other end of the room.
      expect(await page.getByText('Ida Sommer').count()).toBe(0);
      await page.getByRole('button', { name: /^Lay the tray for / }).click();
      await page.getByRole('heading', { level: 1, name: 'Tray' }).waitFor();
      await page.getByText(/^For [0-9A-Z]{4}-[0-9A-Z]{2}, Powder brows$/).waitFor();
      await page.getByText('Nothing yet.').waitFor();

      const sessionId = page.url().split('/').at(-1);
      const codesOnTray = async () => {
        const tray = await service.seen<{ lines: { lotCode: string }[] }>(`/sessions/${sessionId}/tray`);
        return tray.lines.map(({ lotCode }) => lotCode);
      };

      // As a hand-held scanner does: it types and presses Enter, and the field is there for the next.
      const show = async (symbol: string) => {
        await page.keyboard.type(symbol);
        await page.keyboard.press('Enter');
      };
      const verdict = page.locator('[data-verdict]');
      await show('HU-118');
      await verdict.getByText('Admitted', { exact: true }).waitFor();
      await verdict.getByRole('button', { name: 'I open it now' }).click();
      await verdict.getByRole('button', { name: 'I open it now' }).waitFor({ state: 'detached' });

      await show('OLD-1');
      await verdict.getByText('Refused', { exact: true }).waitFor();
      await verdict.getByText(/Take .*Umber.*HU-118, instead\./).waitFor();

      await show('CL-9');
      await verdict.getByText('Admitted', { exact: true }).waitFor();
      // The same code again is never counted in silence.
      await show('CL-9');
      await verdict.getByText('Another one?', { exact: true }).waitFor();
      await verdict.getByRole('button', { name: '+1, another piece' }).click();
      const lines = page.getByRole('list', { name: 'On the tray' });
      await lines.getByText(/lot CL-9, 2 pieces/).waitFor();

      // Without network it is judged here, waits, and counts once when the service is reached again.
      await browser.setOffline(true);
      await show('HU-119');
      await lines.getByText(/lot HU-119/).waitFor();
      expect(await codesOnTray()).not.toContain('HU-119');
      await browser.setOffline(false);
      await expect.poll(codesOnTray).toContain('HU-119');

      // Faster than the service judges.
      await page.keyboard.type('T-1\nT-2\nT-3\n');
      for (const code of ['T-1', 'T-2', 'T-3']) await lines.getByText(`lot ${code}, typed`).waitFor();

      await show('NOTHING-LIKE-IT');
      await page.getByRole('alert').waitFor();
      await page.reload();
      await lines.getByText(/lot HU-118/).waitFor();
      await lines.getByRole('button', { name: /Take off: .*Umber/ }).click();
      await lines.getByText(/lot HU-118/).waitFor({ state: 'detached' });
      watched.expectNoComplaint();
    }));
});
