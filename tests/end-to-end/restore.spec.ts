import { randomBytes } from 'node:crypto';
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { MasterKeys } from '../../src/platform/encryption/master-keys.js';
import { seal } from '../../src/platform/encryption/sealing.js';
import { backupsIn } from '../support/backups.js';
import { CommandsInTurn } from '../support/commands.js';
import { allMigrations, makeOlderRecord, migrationsApplied } from '../support/older-record.js';
import { PlainSql } from '../support/plain-sql.js';
import { type RunningService, startService } from '../support/service.js';
import { StockedStudio } from '../support/stocked-studio.js';

const inTurn = new CommandsInTurn();
afterAll(() => inTurn.end());

async function printed(parameters: string[], environment: Record<string, string> = {}): Promise<string> {
  const { code, out, err } = await inTurn.run(parameters, environment);
  expect([code, err]).toEqual([0, '']);
  return out;
}

let away: string;
beforeEach(() => {
  away = mkdtempSync(join(tmpdir(), 'lotward-restore-'));
  return () => rmSync(away, { recursive: true });
});

describe('a restore of a backup whose schema is older', () => {
  it('leaves the folder of backups as it was, though that is full and the backup the oldest in it', async () => {
    const [older, into] = [join(away, 'older'), join(away, 'fresh')];
    const environment = { BACKUP_DIR: join(away, 'backups'), BACKUP_KEEP: '2' };
    const keys = join(away, 'keys.json');
    await makeOlderRecord({ dataFolder: older });
    await giveStudioKey(older, keys);
    const backUp = () => printed(['backup'], { ...environment, DATA_DIR: older });
    await backUp();
    const sql = await PlainSql.connect({ dataFolder: older }, 'write');
    const hash = 'cd'.repeat(32);
    await sql.rows(
      `INSERT INTO audit_entry SELECT studio_id, 2, recorded_at, NULL, via, action, subject_kind, subject_id, payload, hash, '${hash}' FROM audit_entry`,
    );
    await sql.rows(`UPDATE audit_head SET sequence = 2, hash = '${hash}'`);
    await sql.close();
    await backUp();
    const before = backupsIn(environment.BACKUP_DIR);
    const [backup] = before;
    expect(before).toHaveLength(2);
    const { err, out } = await inTurn.run(
      ['restore', backup?.folder ?? '', '--into', into, '--keys', keys],
      environment,
    );
    expect(err).toBe('');
    expect(out).toContain(`Restored into ${into}`);
    expect(await migrationsApplied({ dataFolder: into })).toEqual(allMigrations);
    expect(backupsIn(environment.BACKUP_DIR)).toEqual(before);
  });
});

/** What a start of that version made: the key of its one studio. */
async function giveStudioKey(dataFolder: string, keyFile: string): Promise<void> {
  const keys = MasterKeys.load(keyFile, true);
  const wrapped = seal(keys.get(keys.currentId), randomBytes(32), 'studio_key:studio');
  const sql = await PlainSql.connect({ dataFolder }, 'write');
  await sql.rows("INSERT INTO studio_key VALUES ('studio', $1, $2)", [keys.currentId, wrapped]);
  await sql.close();
}

describe('a restore', () => {
  let service: RunningService;
  let backupFolder: string;
  let keyFile: string;

  const backUp = async () => {
    await printed(['backup'], { DATA_DIR: service.dataFolder });
    return backupsIn(backupFolder).at(-1)?.folder ?? '';
  };

  beforeAll(async () => {
    // Nobody answers there, so that what is to be mailed waits.
    const environment = { SMTP_URL: 'smtp://127.0.0.1:9', MAIL_FROM: 'orders@lotward.example' };
    service = await startService('sqlite', { environment });
    backupFolder = join(service.dataFolder, 'backups');
    keyFile = join(service.dataFolder, 'master-keys.json');
    await backUp();
  });
  afterAll(() => service.dispose());

  it('replaces no key file that lies in the folder and differs from the one named', async () => {
    const into = join(away, 'used');
    mkdirSync(into);
    const lying = join(into, 'master-keys.json');
    cpSync(keyFile, lying);
    MasterKeys.load(lying, false).addCurrent();
    const before = readFileSync(lying, 'utf8');
    const backup = backupsIn(backupFolder)[0]?.folder ?? '';
    const refused = await inTurn.run(['restore', backup, '--into', into, '--keys', keyFile]);
    expect([refused.code, refused.err]).toEqual([
      1,
      expect.stringContaining(`${into} holds a key file already, and it differs from ${keyFile}.`),
    ]);
    expect(readFileSync(lying, 'utf8')).toBe(before);
    expect(readdirSync(into)).toEqual(['master-keys.json']);
    // The same one may be named.
    const copy = join(away, 'copy.json');
    writeFileSync(copy, before);
    await printed(['restore', backup, '--into', into, '--keys', copy]);
    expect(readFileSync(lying, 'utf8')).toBe(before);
    expect(existsSync(join(into, 'lotward.sqlite'))).toBe(true);
  });

  it('that left newer backups behind is named by verify, which still finds that they do not fit', async () => {
    const older = await backUp();
    await service.made('/makers', { name: 'Forgotten maker' });
    const newer = await backUp();
    const into = join(away, 'fresh');
    await printed(['restore', older, '--into', into, '--keys', keyFile]);
    const [entry] = await restoreEntries(into);
    const environment = { DATA_DIR: into, BACKUP_DIR: backupFolder };
    const told = ` Entry ${entry?.sequence} (record.restore, ${entry?.recorded_at}) says that the backup ${nameOf(older)} was restored`;
    const { code, out } = await inTurn.run(['verify'], environment);
    expect(code).toBe(2);
    expect(out).toMatch(new RegExp(`the backup ${nameOf(newer)} knows.* or an older backup was restored\\.`));
    expect(out).toContain(told);
  });

  it('leaves it to people whether an order that waited to be mailed is sent', async () => {
    const { id: supplierId } = await service.made<{ id: string }>('/suppliers', { name: 'Pellworm Supply' });
    const productId = await new StockedStudio(service).product({ name: 'Brow' });
    const contact = { mailAddress: 'orders@pellworm.example' };
    await service.put(`/supplier-terms/${supplierId}`, { orderWeekdays: [], contact });
    const lines = [{ productId, packs: 1, packPriceMinor: 100 }];
    const { id: orderId } = await service.made<{ id: string }>('/purchase-orders', { supplierId, lines });
    await service.made(`/purchase-orders/${orderId}/approval`, { version: 1 });
    await service.made(`/purchase-orders/${orderId}/sending`, { version: 2, as: 'mail' });
    const into = join(away, 'fresh');
    await printed(['restore', await backUp(), '--into', into, '--keys', keyFile]);
    const restored = await PlainSql.connect({ dataFolder: into }, 'read');
    const [mail] = await restored.rows('SELECT state, last_error FROM purchase_order_mail');
    await restored.close();
    expect(mail).toEqual({ state: 'failed', last_error: expect.stringContaining('Ask the supplier') });
  });

  const nameOf = (folder: string) => folder.slice(backupFolder.length + 1);

  async function restoreEntries(dataFolder: string) {
    const sql = await PlainSql.connect({ dataFolder }, 'read');
    const entries = await sql.rows<{ sequence: number; recorded_at: string }>(
      "SELECT sequence, recorded_at FROM audit_entry WHERE action = 'record.restore'",
    );
    await sql.close();
    return entries;
  }
});
