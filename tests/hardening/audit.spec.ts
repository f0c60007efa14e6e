import { spawnSync } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

/** Runs the audit with an npm that answers so. */
function auditWith(answer: unknown, exitCode: number) {
  const folder = mkdtempSync(join(tmpdir(), 'lotward-audit-'));
  const text = typeof answer === 'string' ? answer : JSON.stringify(answer);
  writeFileSync(join(folder, 'answer'), text);
  writeFileSync(join(folder, 'npm'), `#!/bin/sh\ncat '${folder}/answer'\nexit ${exitCode}\n`);
  chmodSync(join(folder, 'npm'), 0o755);
  const { status, stdout, stderr } = spawnSync(process.execPath, ['tests/audit.mjs'], {
    encoding: 'utf8',
    env: { PATH: `${folder}:${process.env.PATH}` },
  });
  rmSync(folder, { recursive: true });
  return { status, said: stdout + stderr };
}

const counts = { info: 0, low: 0, moderate: 0, high: 0, critical: 0, total: 0 };
const advisory = (severity: string) => ({
  name: 'leaky-package',
  severity,
  range: '<1.2.3',
  via: [{ title: 'Reads beyond the end' }],
});

// The form of `npm audit --json`, auditReportVersion 2, as npm 11 gives it.
describe('the audit of dependencies', () => {
  it('is good when nothing severe is known', () => {
    const answer = {
      auditReportVersion: 2,
      vulnerabilities: { 'leaky-package': advisory('moderate') },
      metadata: { vulnerabilities: { ...counts, moderate: 1 } },
    };
    expect(auditWith(answer, 1)).toMatchObject({ status: 0, said: expect.stringContaining('No package') });
  });

  it.each(['high', 'critical'])('fails when something %s is known, and names it', (severity) => {
    const answer = {
      auditReportVersion: 2,
      vulnerabilities: { 'leaky-package': advisory(severity) },
      metadata: { vulnerabilities: { ...counts, [severity]: 1 } },
    };
    const { status, said } = auditWith(answer, 1);
    expect(status).toBe(1);
    expect(said).toContain(`${severity}: leaky-package <1.2.3: Reads beyond the end`);
  });

  it.each([
    ['does not know the question', { statusCode: 405, error: { summary: '', detail: '' } }],
    ['cannot be reached', { message: 'connect ECONNREFUSED', error: { summary: '', detail: '' } }],
    ['answers something else', 'a page for people'],
    ['answers nothing', ''],
  ])('says that nothing was checked when the registry %s', (_, answer) => {
    expect(auditWith(answer, 1)).toMatchObject({ status: 2, said: expect.stringContaining('NOT CHECKED') });
  });
});
