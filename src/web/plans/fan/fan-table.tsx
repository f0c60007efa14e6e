import { useTexts } from '../../texts/texts.js';
import { writtenDay } from '../../texts/written-dates.js';
import { NumbersTable } from '../numbers-table.js';
import type { FanDay } from './fan-geometry.js';

const levels = ['p5', 'p25', 'p50', 'p75', 'p95'] as const;

/** The numbers of a fan: so many in a hundred of all courses have at most this. */
export function FanTable({
  label,
  days,
  written,
}: {
  label: string;
  days: readonly FanDay[];
  written: (amount: number) => string;
}) {
  const texts = useTexts();
  const words = texts.plans.fan;
  return (
    <NumbersTable
      label={label}
      first={words.day}
      columns={levels.map((level) => words.levels[level])}
      rows={days.map((row) => ({
        key: row.day,
        name: writtenDay(row.day, texts.language),
        cells: levels.map((level) => written(row[level])),
      }))}
    />
  );
}
