import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { ClientRecordView, SessionView, UseView } from '../../src/sessions/session-record.views.js';
import { hasChromium } from '../support/chromium.js';
import { useDevices } from '../support/devices.js';
import { faultsEverywhere } from '../support/page-audit.js';
import { makeSampleStudio, type SampleStudio, walkIn } from '../support/sample-studio.js';
import { type RunningService, startService } from '../support/service.js';
import { personOfRole } from '../support/signing-in.js';
import { makeTreatedClient, type TreatedClient, texts } from '../support/treated-client.js';
import { makeUsualVisit, type UsualVisit } from '../support/usual-visit.js';
import type { Watched } from '../support/watched-page.js';
import { pageOf, pageOfOwner } from '../support/web-steps.js';

const aMonthAgo = new Date(Date.now() - 30 * 86_400_000).toISOString().slice(0, 10);
/** Where pictures of the screens go, for whoever wants to look at them. */
const pictures = process.env.SCREENSHOTS;

describe.skipIf(!hasChromium)('the pages of records', () => {
  const withDevices = useDevices();
  let service: RunningService;
  let studio: SampleStudio;
  let usual: UsualVisit;
  let treated: TreatedClient;
  beforeAll(async () => {
    service = await startService();
    studio = await makeSampleStudio(service);
    // Where clocks change.
    const { version } = await service.seen<{ version: number }>('');
    await service.patch('', { version, timeZone: 'Europe/Vienna' });
    usual = await makeUsualVisit(service, studio);
    treated = await makeTreatedClient(service, studio);
  });
  afterAll(() => service.dispose());

  const address = (...below: string[]) =>
    [service.url, 'studios', service.studioId, 'records', ...below].join('/');
  const heading = (page: Page, name: string | RegExp) =>
    page.getByRole('heading', { level: 1, name }).waitFor();
  const sheetOf = (page: Page) => page.getByRole('article', { name: 'Record of a visit' });
  const signInAs = async (
    browser: BrowserContext,
    role: Parameters<typeof personOfRole>[1],
  ): Promise<Watched> => {
    const { cookie } = await personOfRole(service, role);
    return pageOf(browser, service.url, cookie);
  };

  it('plan a session by the clocks of the studio, change it and cancel it', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await page.goto(address('sessions', 'plan'));
      await page.getByLabel('Name, contact or reference').fill('+43 1 5550100');
      await page.getByRole('button', { name: 'Find', exact: true }).click();
      await page.getByRole('button', { name: /^Take / }).click();
      await page.getByText(/^For client /).waitFor();
      const form = page.getByRole('form', { name: 'Plan a session' });
      const start = form.getByLabel('Planned start');
      // Clocks change on the last Sundays of March and October; the plan may lie four years ahead.
      await start.fill('2027-03-28T02:30');
      await form.getByText('This time does not come on that day').waitFor();
      await expect.poll(() => form.getByRole('button', { name: 'Plan it' }).isDisabled()).toBe(true);
      await start.fill('2027-10-31T02:30');
      await form.getByRole('radio', { name: /^The second, after it \(UTC\+01:00\)$/ }).check();
      await form.getByLabel('Procedure').selectOption('Powder brows');
      await form.getByLabel('Visit').selectOption('first session');
      await form.getByRole('button', { name: 'Plan it' }).click();
      await page.waitForURL(/\/records\/sessions\/[0-9a-f-]{36}$/);
      const sessionId = page.url().split('/').at(-1) ?? '';
      const now = () => service.seen<SessionView>(`/sessions/${sessionId}`);
      expect(await now()).toMatchObject({ state: 'planned', plannedStart: '2027-10-31T01:30:00.000Z' });

      // What is not offered any more stays in what was planned with it.
      const archive = async (archived: boolean) => {
        const [procedure] = await service.seen<{ id: string; version: number }[]>(
          '/procedures?archived=shown',
        );
        await service.patch(`/procedures/${procedure?.id}`, { version: procedure?.version, archived });
      };
      await archive(true);
      await page.getByRole('button', { name: 'Change the plan' }).click();
      const change = page.getByRole('form', { name: 'Change the plan' });
      expect(await change.getByRole('radio', { name: /^The second/ }).isChecked()).toBe(true);
      await change.getByLabel('Visit').selectOption('correction');
      await change.getByRole('button', { name: 'Save' }).click();
      await sheetOf(page).getByText('correction', { exact: true }).waitFor();
      await archive(false);
      expect(await now()).toMatchObject({
        visitKind: 'correction',
        plannedStart: '2027-10-31T01:30:00.000Z',
        version: 2,
      });

      await page.getByRole('button', { name: 'Cancel the session' }).click();
      await page.getByRole('dialog').getByRole('button', { name: 'Cancel the session' }).click();
      await sheetOf(page).getByText('cancelled', { exact: true }).waitFor();
      expect((await now()).state).toBe('cancelled');
      watched.expectNoComplaint();
    }));

  it('print every use that the record has, on one page of A4 and of Letter, with nothing around it', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await page.emulateMedia({ colorScheme: 'dark' });
      await page.goto(address('sessions', usual.sessionId));
      await sheetOf(page).getByText('UV-OLD').waitFor();
      await sheetOf(page)
        .getByText(/Kit|slight redness/)
        .first()
        .waitFor();
      const record = await service.seen<ClientRecordView>(`/sessions/${usual.sessionId}/record`);
      await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
      const printed = await textOf(page);
      const uses = [...record.pigments, ...record.instruments, ...record.others, ...record.reversed];
      expect(uses.length).toBeGreaterThanOrEqual(7);
      expect(await sheetOf(page).locator('tbody').count()).toBe(uses.length);
      for (const use of uses) expect(await rowsOf(page, use)).toBeGreaterThanOrEqual(1);
      for (const said of [
        usual.reference,
        'Powder brows',
        'both brows, thin tail',
        'slight redness, gone after an hour',
        'Used although it was refused: on hold, expired.',
        'the only warm one that was left',
        'Sterile barriers are checked by eye.',
        'in mix base',
        'in mix shadow',
        'put back unopened',
      ]) {
        expect(printed).toContain(said);
      }
      // The name only when it is asked for, and nothing to press.
      expect(printed).not.toContain('Quendler');
      expect(printed).not.toContain('Sign out');
      expect(await page.locator('button:visible, nav:visible').count()).toBe(0);
      if (pictures !== undefined) {
        mkdirSync(pictures, { recursive: true });
        await page.setViewportSize({ width: 680, height: 1000 });
        await page.screenshot({ path: join(pictures, 'printed.png'), fullPage: true });
      }
      for (const format of ['A4', 'Letter']) {
        const pdf = await page.pdf({ format, preferCSSPageSize: false });
        expect(pdf.toString('latin1').match(/\/Type \/Page\b/g)).toHaveLength(1);
      }
      await page.emulateMedia({ media: 'screen' });
      await page.getByRole('button', { name: 'Show the name' }).click();
      await sheetOf(page).getByText('Berta Quendler').waitFor();
      watched.expectNoComplaint();
    }));

  it('keep a late use and its reversal in sight, and take what was noticed later', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await page.goto(address('sessions', treated.sessionId));
      await page.getByRole('button', { name: 'Add a use' }).click();
      await page.getByLabel('Product', { exact: true }).fill('liner');
      await page.getByRole('button', { name: /^Halden Colour Works Fine liner/ }).click();
      const form = page.getByRole('form', { name: 'Add a use' });
      await form.getByLabel('Lot code as written').fill('PAPER-7');
      await form.getByLabel('Use by, as written').fill('2029-05');
      await form.getByLabel('How the lot was known').selectOption('typed');
      await form.getByLabel('Pieces').fill('2');
      await form.getByRole('button', { name: 'Save' }).click();
      await page.getByText('The lot was not on record').waitFor();
      const needles = sheetOf(page).getByRole('table', { name: 'Needles' });
      await needles.getByText('2 pieces').waitFor();
      await needles.getByText(/^Added .* by Owner\.$/).waitFor();

      await page.getByRole('button', { name: 'Reverse a use' }).click();
      await page.getByRole('button', { name: /^Reverse the use of .* lot PAPER-7$/ }).click();
      const dialog = page.getByRole('dialog');
      await dialog.getByLabel('Why it was a mistake').fill('the note was of another day');
      await dialog.getByRole('button', { name: 'Reverse' }).click();
      await dialog.waitFor({ state: 'detached' });
      const reversed = sheetOf(page).getByRole('table', { name: 'Recorded by mistake and reversed' });
      await reversed.getByText('PAPER-7').waitFor();
      await reversed.getByText(/the note was of another day/).waitFor();
      await expect.poll(() => sheetOf(page).getByText('No needle is recorded.').count()).toBe(1);

      await page.getByRole('button', { name: 'Leave it' }).click();
      await page.getByRole('button', { name: 'Add complications' }).click();
      await page.getByLabel('What was noticed').fill('a small crust on day three');
      await page.getByRole('button', { name: 'Save' }).click();
      await sheetOf(page)
        .getByText(/a small crust on day three/)
        .waitFor();
      await expect.poll(() => sheetOf(page).getByText(new RegExp(texts.complications)).count()).toBe(1);

      await page.getByRole('button', { name: 'Correct the healed result' }).click();
      await page.getByLabel('Colour still there, in percent').fill('55');
      await page.getByRole('button', { name: 'Save' }).click();
      await sheetOf(page)
        .getByText(/55 % of the colour still there/)
        .waitFor();
      const session = await service.seen<SessionView>(`/sessions/${treated.sessionId}`);
      expect(session.healedResult).toMatchObject({ retainedColourPercent: 55, note: texts.healedNote });
      expect(session.uses.filter(({ lotCode }) => lotCode === 'PAPER-7')).toMatchObject([
        { pieces: 2, useBy: '2029-05-31', reversal: { reason: 'the note was of another day' } },
      ]);
      watched.expectNoComplaint();
    }));

  it('take a visit from a paper form, whose uses are added on its page', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await page.goto(address('sessions', `late?client=${studio.clientId}`));
      const form = page.getByRole('form', { name: 'Record a visit afterwards' });
      await form.getByLabel('When it took place').fill(`${aMonthAgo}T10:15`);
      await form.getByLabel('Procedure').selectOption('Powder brows');
      await form.getByLabel('Visit').selectOption('patch test');
      await form.getByLabel('There were no complications').check();
      await form.getByRole('button', { name: 'Record the visit' }).click();
      await sheetOf(page).getByText('afterwards, from paper').waitFor();
      await sheetOf(page)
        .getByText(/, 10:15 \(/)
        .waitFor();
      await page.getByRole('button', { name: 'Add a use' }).waitFor();
      watched.expectNoComplaint();
    }));

  it('find a client by their contact, with nothing personal in any address or title', () =>
    withDevices(async (browser) => {
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      const titles = new Set<string>();
      const note = async () => titles.add(await page.title());
      await page.goto(address('clients'));
      await heading(page, 'Clients');
      await page.getByLabel('Name, contact or reference').fill(texts.contact);
      await page.getByRole('button', { name: 'Find', exact: true }).click();
      await page.getByText(`${texts.name}, ${texts.contact}`).waitFor();
      await note();
      await page.getByRole('button', { name: `Open ${treated.reference}` }).click();
      await heading(page, `Client ${treated.reference}`);
      await page.getByText(texts.note).waitFor();
      await page.getByText(/^Due from .* to .*\.$/).waitFor();
      await note();
      await page.getByRole('button', { name: 'Show who looked' }).click();
      await page
        .getByText(/^their own page, /)
        .first()
        .waitFor();

      // Why it would be refused is said before anybody asks for it, and asking is not the same as looking.
      await page
        .getByLabel('Why it is asked for')
        .selectOption({ label: 'The client withdrew their consent' });
      await page.getByText('This studio has not said how long it must keep').waitFor();
      expect(await page.getByRole('button', { name: 'Erase the client' }).count()).toBe(0);

      await page
        .getByRole('link', { name: /Powder brows/ })
        .first()
        .click();
      await heading(page, 'Session');
      await note();
      const seen = [...watched.requested, ...titles].map(decodeURIComponent).join('\n');
      expect(watched.requested.length).toBeGreaterThan(10);
      for (const word of ['Ottilie', 'Brandner', 'ottilie']) expect(seen).not.toContain(word);
      watched.expectNoComplaint();
    }));

  it('show an auditor references only, and the log whole', () =>
    withDevices(async (browser) => {
      const watched = await signInAs(browser, 'auditor');
      const { page } = watched;
      await page.goto(address('sessions'));
      await heading(page, 'Sessions');
      await page.getByRole('link', { name: new RegExp(treated.reference) }).waitFor();
      const menu = page.getByRole('navigation', { name: 'Pages: Records' });
      expect(await menu.getByRole('link').allInnerTexts()).toEqual(['Sessions', 'Audit log']);
      const words: string[] = [];
      const read = async () => words.push(await textOf(page));
      await read();
      await page.goto(address('sessions', treated.sessionId));
      await sheetOf(page).getByText('Not shown to this role.').waitFor();
      expect(await page.getByRole('button').allInnerTexts()).toEqual(['Sign out', 'Print']);
      await read();
      await page.goto(address('clients', treated.clientId));
      await heading(page, `Client ${treated.reference}`);
      await page.getByText('Your role sees clients by their reference only.').waitFor();
      await page.getByRole('button', { name: 'Show who looked' }).click();
      await page
        .getByText(/^a session, /)
        .first()
        .waitFor();
      await read();
      await page.goto(address('clients'));
      await heading(page, 'Not for your role');
      for (const text of Object.values(texts)) expect(words.join('\n')).not.toContain(text);

      await menu.getByRole('link', { name: 'Audit log' }).click();
      await heading(page, 'Audit log');
      await page.getByRole('button', { name: 'Verify now' }).click();
      await page.getByText('Whole: everything fits together.').waitFor();
      await page.getByLabel('Action').fill('sessions.reverse-use');
      await page.getByRole('button', { name: 'Show', exact: true }).click();
      const entries = page.getByRole('list', { name: 'Entries' });
      await expect.poll(() => entries.getByText(/^sessions\.reverse-use/).count()).toBeGreaterThan(0);
      await expect.poll(() => entries.getByText(/^clients\.add/).count()).toBe(0);
      await entries.getByText('What it says').first().click();
      await entries
        .getByText(/session_use_reversal .*, made/)
        .first()
        .waitFor();
      const download = page.waitForEvent('download');
      await page.getByRole('button', { name: 'Download the log' }).click();
      expect((await download).suggestedFilename()).toMatch(/^audit-log-.*\.ndjson$/);
      watched.expectNoComplaint();
    }));

  it('say what stands against an erasure before it is asked for, and erase whom a person names', () =>
    withDevices(async (browser) => {
      const { version } = await service.seen<{ version: number }>('');
      await service.patch('', { version, retentionPreset: 'own', retentionYears: 2 });
      const long = new Date(Date.now() - 5 * 365.25 * 86_400_000).toISOString();
      const late = await service.made<{ clientId: string; clientReference: string }>('/sessions/late', {
        source: 'paper',
        occurredAt: long,
        client: { name: 'Long Ago' },
        artistId: studio.ownerId,
        procedureId: studio.procedureId,
        visitKind: 'first session',
        uses: [],
        signedBy: studio.ownerId,
      });
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      await page.goto(address('retention'));
      await page.getByRole('checkbox', { name: `Erase ${late.clientReference}` }).check();
      await expect.poll(() => page.getByRole('checkbox').count()).toBe(1);
      await page.getByRole('button', { name: 'Erase 1 client' }).click();
      const dialog = page.getByRole('dialog');
      await dialog.getByText(late.clientReference).waitFor();
      await dialog.getByRole('button', { name: 'Erase 1 client' }).click();
      await page.getByText('1 client is erased.').waitFor();
      expect(await service.seen(`/clients/${late.clientId}`)).toMatchObject({ name: null });

      const fresh = await makeTreatedClient(service, studio);
      await page.goto(address('clients', fresh.clientId));
      await page.getByLabel('Why it is asked for').selectOption({ label: 'The client objects' });
      await page.getByText('As it stands, it would be refused:').waitFor();
      await page.getByRole('button', { name: 'Have the refusal recorded' }).waitFor();
      expect(await service.seen(`/clients/${fresh.clientId}/erasure`)).toMatchObject({ items: [] });
      await page.getByRole('checkbox', { name: 'No legal obligation applies here' }).check();
      await page.getByText('With what you say, the client would be erased.').waitFor();
      await page.getByRole('button', { name: 'Erase the client' }).click();
      await page.getByRole('dialog').getByRole('button', { name: 'Erase the client' }).click();
      await page.getByText(/^Erased .* gone for good\./).waitFor();
      expect(await textOf(page)).not.toContain(texts.name);
      // That there were no complications is not known any more, and not said.
      await page.goto(address('sessions', fresh.sessionId));
      await sheetOf(page).getByText('Erased, as is who the client was.').waitFor();
      await expect
        .poll(() => sheetOf(page).getByRole('table', { name: 'Pigments' }).locator('tbody').count())
        .toBe(1);
      watched.expectNoComplaint();
    }));

  const screens: Record<string, (page: Page) => Promise<unknown>> = {
    sessions: async (page) => {
      await page.goto(address('sessions'));
      await page.getByRole('link', { name: new RegExp(usual.reference) }).waitFor();
    },
    plan: async (page) => {
      await page.goto(address('sessions', `plan?client=${usual.clientId}`));
      await page.getByText(/^For client /).waitFor();
      await page.getByLabel('Follows').waitFor();
      await page.getByLabel('Planned start').fill('2027-10-31T02:30');
      await page.getByText('This time comes twice').waitFor();
    },
    'a visit afterwards': async (page) => {
      await page.goto(address('sessions', 'late'));
      await page.getByLabel('Who signs off').waitFor();
    },
    session: async (page) => {
      await page.goto(address('sessions', usual.sessionId));
      await page.getByRole('button', { name: 'Add a use' }).waitFor();
    },
    'session with reversals': async (page) => {
      await page.goto(address('sessions', treated.sessionId));
      await page.getByRole('button', { name: 'Add a use' }).click();
      await page.getByLabel('Product', { exact: true }).fill('gel');
      await page.getByRole('button', { name: /Numbing gel/ }).click();
      await page.getByLabel('How the lot was known').waitFor();
    },
    clients: async (page) => {
      await page.goto(address('clients'));
      await page.getByLabel('Name, contact or reference').fill('Berta Quendler');
      await page.getByRole('button', { name: 'Find', exact: true }).click();
      await page.getByRole('button', { name: 'Show the list' }).click();
      await page.getByRole('link', { name: `Open ${usual.reference}` }).waitFor();
    },
    client: async (page) => {
      await page.goto(address('clients', usual.clientId));
      await page.getByRole('button', { name: 'Show the lots' }).click();
      await page.getByRole('button', { name: 'Show who looked' }).click();
      await page.getByRole('button', { name: 'Note the claim' }).click();
      await page.getByLabel('Why it is asked for').selectOption({ label: 'The client objects' });
      await page.getByText('As it stands, it would be refused').waitFor();
    },
    log: async (page) => {
      await page.goto(address('log'));
      await page.getByText('What it says').first().click();
      await page.getByRole('button', { name: 'Verify now' }).click();
      await page.getByText('Whole: everything fits together.').waitFor();
    },
    backups: async (page) => {
      await page.goto(address('backups'));
      await page.getByText('Last good backup').waitFor();
    },
    retention: async (page) => {
      await page.goto(address('retention'));
      await page.getByText('is kept').first().waitFor();
    },
  };

  it('can be read and pressed by day and night, on 360 to 1280 px', { timeout: 180_000 }, () =>
    withDevices(async (browser) => {
      await walkIn(service, studio);
      const watched = await pageOfOwner(browser, service);
      const { page } = watched;
      const faults: string[] = [];
      for (const [name, open] of Object.entries(screens)) {
        await page.setViewportSize({ width: 1280, height: 800 });
        await open(page);
        faults.push(...(await faultsEverywhere(page)).map((fault) => `${name}: ${fault}`));
      }
      expect(faults).toEqual([]);
      watched.expectNoComplaint();
    }),
  );
});

/** What can be read on a page now: as printed, when that is what the browser is told to show. */
async function textOf(page: Page): Promise<string> {
  return String(await page.evaluate('document.body.innerText'));
}

/** How many rows of the sheet say what a use is: product, lot and the words for how it was known. */
async function rowsOf(page: Page, { productName, lotCode }: UseView): Promise<number> {
  return page
    .getByRole('table')
    .locator('tbody tr')
    .filter({ hasText: productName })
    .filter({ hasText: lotCode ?? 'none printed or unreadable' })
    .count();
}
