import type { JudgedForecast, Judgement } from './judge-forecasts.js';
import type { SeriesClass } from './series-class.js';

const groups = ['all', 'smooth', 'erratic', 'intermittent', 'lumpy', 'no demand'] as const;
type Group = SeriesClass | 'all';

/** The comparison as lines of a table: the mixtures first, then the single methods, the best first. */
export function judgementTable({ series, forecasts }: Judgement): string[] {
  const shown: readonly Group[] = groups.filter((group) => (series.get(group) ?? 0) > 0);
  const isMixture = ({ name }: JudgedForecast) => name.startsWith('mixture');
  const lossOf = ({ losses }: JudgedForecast) => losses.get('all') ?? 0;
  const singles = forecasts
    .filter((each) => !isMixture(each))
    .sort((one, other) => lossOf(one) - lossOf(other));
  const rows = [
    ['mean pinball loss', ...shown, 'enough'],
    ['series', ...shown.map((group) => String(series.get(group) ?? 0)), ''],
    ...[...forecasts.filter(isMixture), ...singles].map(({ name, losses, enough }) => [
      name,
      ...shown.map((group) => (losses.get(group) ?? 0).toFixed(4)),
      `${(100 * enough).toFixed(1)} %`,
    ]),
  ];
  const widths = rows.reduce<number[]>(
    (widest, row) => row.map((cell, column) => Math.max(widest[column] ?? 0, cell.length)),
    [],
  );
  return rows.map((row) =>
    row
      .map((cell, column) =>
        column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0),
      )
      .join('  ')
      .trimEnd(),
  );
}
