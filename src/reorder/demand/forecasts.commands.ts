import { createReadStream } from 'node:fs';
import { InvalidArgumentError } from 'commander';
import { CsvError, parse } from 'csv-parse';
import type { AddCommands } from '../../platform/commands.js';
import { OperatorError } from '../../platform/operator-error.js';
import type { JudgeOptions } from './judge-forecasts.js';
import { judgementTable } from './judgement-table.js';
import { MOST_PERIODS_READ, seriesOfCells } from './series-cells.js';

const mostSeries = 20_000;
const mostBytesOfLine = 200_000;
const mostPeriodsAhead = 60;

interface Options extends JudgeOptions {
  inColumns?: boolean;
}

export const addForecastsCommands: AddCommands = (commands) => {
  const forecasts = commands.command('forecasts').description('how demand is foretold');
  forecasts
    .command('judge <file>')
    .description(
      'foretells the last periods of each series of a CSV file from what comes before them, and compares the mixture of methods with each single method by pinball loss; needs no database',
    )
    .option('--periods <number>', 'periods at the end whose sum is foretold', periodsOf, 3)
    .option('--at <level>', 'probability with which the forecast should be enough', levelOf, 0.95)
    .option('--in-columns', 'each column is a series, not each line')
    .addHelpText(
      'after',
      `
The file: one series a line, the oldest period first, whole numbers; the first cell may be a name, a first line without
numbers is a heading. Nothing at the beginning or the end of a series is left out.

Each single method but the bootstrap smooths with 0.1; its spread is Poisson, negative binomial by the variance of the
series, or normal by its own errors. "Series together" learns which methods suit from what comes before the last periods of all series.`,
    )
    .action(
      async (
        file: string,
        { periods, at, inColumns = false }: { periods: number; at: number } & Partial<Options>,
      ) => {
        const series = await seriesOfFile(file, inColumns);
        // Loaded here, since distributions would make every other command slower.
        const { judgeForecasts } = await import('./judge-forecasts.js');
        const judged = judgeForecasts(series, { periods, level: at });
        if (judged.forecasts.length === 0) {
          throw new OperatorError(
            `${file} has ${series.length} series, none long enough: at least ${6 + periods} periods are needed to foretell the last ${periods}.`,
          );
        }
        const lines = [
          `The sum of the last ${periods} periods, foretold to be enough in ${+(100 * at).toFixed(6)} % of cases.`,
          ...(judged.tooShort > 0 ? [`${judged.tooShort} series are too short and left out.`] : []),
          '',
          ...judgementTable(judged),
        ];
        process.stdout.write(`${lines.join('\n')}\n`);
      },
    );
};

function periodsOf(text: string): number {
  const periods = Number(text);
  if (Number.isInteger(periods) && periods >= 1 && periods <= mostPeriodsAhead) return periods;
  throw new InvalidArgumentError(`Allowed are whole numbers from 1 to ${mostPeriodsAhead}.`);
}

function levelOf(text: string): number {
  const level = Number(text);
  if (level > 0 && level < 1) return level;
  throw new InvalidArgumentError('Allowed is a number between 0 and 1, such as 0.95.');
}

/** Reads a line at a time; only the counts are kept. */
async function seriesOfFile(file: string, inColumns: boolean): Promise<number[][]> {
  const rows = parse({
    bom: true,
    relaxColumnCount: true,
    skipEmptyLines: true,
    maxRecordSize: mostBytesOfLine,
  });
  const text = createReadStream(file);
  text.on('error', (error) => rows.destroy(error));
  text.pipe(rows);
  const series: number[][] = [];
  const columns: string[][] = [];
  let line = 0;
  try {
    for await (const cells of rows as AsyncIterable<string[]>) {
      line++;
      if (inColumns) {
        checkNumber(file, cells.length, mostSeries, 'columns');
        checkNumber(file, line, MOST_PERIODS_READ + 1, 'lines');
        // A short line has nothing in its last columns.
        for (let column = 0; column < Math.max(cells.length, columns.length); column++) {
          const known = columns[column] ?? new Array<string>(line - 1).fill('');
          known.push(cells[column] ?? '');
          columns[column] = known;
        }
        continue;
      }
      const counts = seriesOfCells(cells, `Line ${line}`);
      if (counts) series.push(counts);
      checkNumber(file, series.length, mostSeries, 'series');
    }
    for (const [index, cells] of columns.entries()) {
      const counts = seriesOfCells(cells, `Column ${index + 1}`);
      if (counts) series.push(counts);
    }
  } catch (error) {
    throw unreadable(file, error);
  } finally {
    text.destroy();
  }
  return series;
}

function checkNumber(file: string, seen: number, most: number, what: string): void {
  if (seen > most) throw new OperatorError(`${file} has more than ${most} ${what}. Split it.`);
}

function unreadable(file: string, error: unknown): Error {
  if (error instanceof RangeError) return new OperatorError(`${file}: ${error.message}`);
  if (error instanceof CsvError) {
    return new OperatorError(`${file} cannot be read as CSV: ${error.message}. Save it as CSV with commas.`);
  }
  if (error instanceof Error && 'code' in error && error.code === 'ENOENT') {
    return new OperatorError(`There is no file ${file}. Give the path of a CSV file.`);
  }
  return error instanceof Error ? error : new Error(String(error));
}
