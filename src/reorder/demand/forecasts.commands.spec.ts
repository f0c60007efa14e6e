import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Command } from 'commander';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { madeSeries, uniform } from '../../../tests/support/made-series.js';
import { addForecastsCommands } from './forecasts.commands.js';

let folder: string;
const inProgram = () => Promise.reject(new Error('No database is needed.'));
const random = uniform(3);
const series = Object.values(madeSeries).map((make) => make(random, 30));

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'forecasts-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

async function judge(text: string, ...options: string[]): Promise<string> {
  const file = join(folder, 'series.csv');
  await writeFile(file, text);
  const written: string[] = [];
  const stdout = vi
    .spyOn(process.stdout, 'write')
    .mockImplementation((chunk) => written.push(String(chunk)) > 0);
  try {
    const commands = new Command().exitOverride().configureOutput({ writeErr: () => {} });
    addForecastsCommands(commands, inProgram);
    for (const command of commands.commands.flatMap((each) => each.commands)) {
      command.exitOverride().configureOutput({ writeErr: () => {} });
    }
    await commands.parseAsync(['forecasts', 'judge', file, ...options], { from: 'user' });
  } finally {
    stdout.mockRestore();
  }
  return written.join('');
}

describe('judging forecasts on a file', () => {
  it('prints the loss of the mixture and of each single method, series in lines or in columns', async () => {
    const lines = await judge(
      `name,first\n${series.map((counts, index) => `s${index},${counts}`).join('\n')}\n`,
    );
    expect(lines).toContain('The sum of the last 3 periods, foretold to be enough in 95 % of cases.');
    expect(lines.split('\n').filter((line) => /Poisson|binomial|normal|mixture/.test(line))).toHaveLength(14);
    const periods = Array.from({ length: 30 }, (_, period) => [
      `month ${period}`,
      ...series.map((counts) => counts[period]),
    ]);
    const columns = [['', ...series.map((_, index) => `s${index}`)], ...periods]
      .map((row) => row.join(','))
      .join('\r\n');
    expect(await judge(columns, '--in-columns')).toBe(lines);
  });

  it('says what is wrong with a file or an option', async () => {
    await expect(judge('a,1,2\nb,3,x')).rejects.toThrow('Line 2: cell 3 is "x"');
    await expect(judge('a,1,2')).rejects.toThrow('none long enough: at least 9 periods');
    await expect(judge('')).rejects.toThrow('has 0 series');
    await expect(judge('a,"1')).rejects.toThrow('cannot be read as CSV');
    await expect(judge('1', '--at', '1')).rejects.toThrow('a number between 0 and 1');
    await expect(judge('1', '--periods', '0')).rejects.toThrow('from 1 to 60');
  });

  it('says that there is no such file', async () => {
    const commands = new Command();
    addForecastsCommands(commands, inProgram);
    const missing = join(folder, 'none.csv');
    await expect(commands.parseAsync(['forecasts', 'judge', missing], { from: 'user' })).rejects.toThrow(
      'There is no file',
    );
  });
});
