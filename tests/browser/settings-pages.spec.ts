import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio, type SampleStudio } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { accept, goTo, invite, openAsOwner } from '../support/web-steps.js';

interface Studio {
  useByNearDays: number;
  openedLifeEndingDays: number;
  assumedOpenedLife: string | null;
  name: string;
}

describe.skipIf(!hasChromium)('the settings of a studio', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let studio: SampleStudio;
  beforeAll(async () => {
    service = await startService();
    studio = await makeSampleStudio(service);
    // Known well enough to stand for another.
    await service.made('/products', {
      kind: 'cartridge',
      makerId: studio.makerId,
      name: 'Liner, long taper',
      notation: '1205RLLT',
      machineFit: 'common bayonet',
      membrane: 'yes',
    });
  });
  afterAll(() => service.dispose());

  const settings = async () => (await service.get<Studio>('', {})).body;
  const near = (page: Page) => page.getByLabel('Days before a use-by date');
  const ending = (page: Page) => page.getByLabel('Days before an opened life ends');
  const save = (page: Page) => page.getByRole('button', { name: 'Save' }).click();

  it('take a threshold, and say so when two change the same, so that nothing of either is lost', () =>
    withDevices(async (one, other) => {
      const mine = await openAsOwner(one, service);
      const theirs = await openAsOwner(other, service);
      for (const { page } of [mine, theirs]) {
        await goTo(page, 'Thresholds');
        await near(page).waitFor();
      }
      await near(theirs.page).fill('45');
      await ending(theirs.page).fill('9');
      await save(theirs.page);
      await theirs.page.getByText('Saved.').waitFor();
      expect(await settings()).toMatchObject({ useByNearDays: 45, openedLifeEndingDays: 9 });

      await near(mine.page).fill('30');
      await mine.page
        .getByLabel('Where the label gives no opened life')
        .selectOption({ label: 'none is assumed' });
      await save(mine.page);
      await mine.page.getByText('Somebody else changed this in the meantime').waitFor();
      await mine.page.getByText('Somebody else made this “45” in the meantime.').waitFor();
      // Theirs holds, mine is still written; what only they changed is shown as it is.
      expect(await settings()).toMatchObject({ useByNearDays: 45, assumedOpenedLife: 'P6M' });
      expect([await near(mine.page).inputValue(), await ending(mine.page).inputValue()]).toEqual(['30', '9']);
      expect(await faultsEverywhere(mine.page)).toEqual([]);
      await save(mine.page);
      await mine.page.getByText('Saved.').waitFor();
      expect(await settings()).toMatchObject({
        useByNearDays: 30,
        openedLifeEndingDays: 9,
        assumedOpenedLife: null,
      });
      mine.expectNoComplaint();
      theirs.expectNoComplaint();
    }));

  it('hold a procedure and its kit list, of products and of configurations', () =>
    withDevices(async (browser) => {
      const watched = await openAsOwner(browser, service);
      const { page } = watched;
      await goTo(page, 'Procedures');
      const adding = page.getByRole('form', { name: 'Add a procedure' });
      await adding.getByLabel('Name').fill('Shaded lips');
      await adding.getByLabel('Place on the body').selectOption('lips');
      await adding.getByLabel('First day').fill('50');
      await adding.getByRole('button', { name: 'Add the procedure' }).click();
      await adding.getByText('A touch-up from 50 to 40 days was given').first().waitFor();
      await adding.getByLabel('Last day').fill('60');
      await adding.getByRole('button', { name: 'Add the procedure' }).click();
      await page.getByText('lips, touch-up 50 to 60 days later').waitFor();

      await page.getByRole('button', { name: 'Kit list of Shaded lips' }).click();
      const form = page.getByRole('form', { name: 'Kit list of Shaded lips' });
      await form.getByText('Nothing is needed.').waitFor();
      await form.getByRole('textbox', { name: 'Add a product' }).fill('Umber');
      await form.getByRole('button', { name: /Umber/ }).click();
      await form.getByLabel('Add any cartridge of a configuration').selectOption({ label: '1205RLLT' });
      await form.getByLabel(/^Pieces of any cartridge/).fill('2');
      await form.getByRole('button', { name: /^Move any cartridge/ }).click();
      await form.getByRole('button', { name: 'Save' }).click();
      await form.getByText('Saved.').waitFor();
      expect(await faultsEverywhere(page)).toEqual([]);

      const [, lips] = await service.seen<{ id: string }[]>('/procedures');
      const list = await service.seen<{
        version: number;
        items: { productId: string | null; quantity: number }[];
      }>(`/procedures/${lips?.id}/kit-list`);
      expect(list.items.map(({ productId, quantity }) => [productId, quantity])).toEqual([
        [null, 2],
        [studio.umberId, 1],
      ]);
      await page.reload();
      await page.getByRole('button', { name: 'Kit list of Shaded lips' }).click();
      await page.getByText('any cartridge 1205RLLT').waitFor();

      // Somebody else empties the list while it is written on here; that it is read anew by itself makes it no other's.
      const path = `/procedures/${lips?.id}/kit-list`;
      await form.getByLabel(/^Pieces of any cartridge/).fill('3');
      expect((await service.put(path, { items: [], version: list.version })).status).toBe(200);
      const readAnew = page.waitForResponse((response) => new URL(response.url()).pathname.endsWith(path));
      await page.evaluate(`window.dispatchEvent(new Event('visibilitychange'))`);
      await (await readAnew).finished();
      await form.getByRole('button', { name: 'Save' }).click();
      await form.getByText('Somebody else changed this list in the meantime').waitFor();
      await form.getByText('Nothing is needed.').waitFor();
      expect((await service.seen<{ items: object[] }>(path)).items).toEqual([]);
      await form.getByRole('button', { name: 'Save' }).click();
      await form.getByText('Saved.').waitFor();
      expect((await service.seen<{ items: object[] }>(path)).items).toHaveLength(2);
      watched.expectNoComplaint();
    }));

  it('let the owner of a chain add a studio, and others read only', () =>
    withDevices(async (desk, phone) => {
      const owner = await openAsOwner(desk, service);
      const manager = await accept(phone, await invite(owner.page, 'Bo Ek', 'Manager'), {
        signInName: 'bo',
        password: 'eleven paper kites hover',
      });
      await goTo(owner.page, 'Studio');
      await owner.page.getByRole('button', { name: 'Add a studio' }).waitFor();
      expect(await faultsEverywhere(owner.page)).toEqual([]);
      const general = owner.page.getByRole('form', { name: 'The studio' });
      await general.getByLabel('How people reach the studio').fill(' telephone 0800 555 0100 ');
      await general.getByRole('button', { name: 'Save' }).click();
      await general.getByText('Saved.').waitFor();
      const { contactPoint } = await service.seen<{ contactPoint: string | null }>('');
      expect(contactPoint).toBe('telephone 0800 555 0100');
      const form = owner.page.getByRole('form', { name: 'Add a studio' });
      await form.getByLabel('Name of the studio').fill('Harbour Studio');
      await form.getByRole('button', { name: 'Add a studio' }).click();
      await form.getByText('Harbour Studio is added.').waitFor();
      await owner.page.getByRole('combobox', { name: 'Studio', exact: true }).selectOption('Harbour Studio');
      await owner.page.getByRole('main').getByText('Harbour Studio', { exact: true }).waitFor();
      owner.expectNoComplaint();

      const { page } = manager;
      await goTo(page, 'Studio');
      await page.getByText('The owner can change them').waitFor();
      await page.getByText('Passkeys only').waitFor();
      expect(await page.getByRole('main').getByRole('button').count()).toBe(0);
      expect(await faultsEverywhere(page)).toEqual([]);
      manager.expectNoComplaint();
    }));
});
