import type { PlannedRow, StockEffect } from './opening-stock-plan.js';

/** What a plan would make, told row by row. */
export function previewOf(
  planned: readonly PlannedRow[],
  faults: readonly { row: number | null; column: string | null; message: string }[],
  warnings: string[],
) {
  const counts = countsOf(planned);
  return {
    usable: faults.length === 0 && counts.faultyRows === 0,
    counts,
    faults: [...faults],
    warnings,
    rows: planned.map(
      ({ number, row, pieces, containers, effects, setAside, remainingMicrolitres, ...told }) => ({
        row: number,
        maker: row.maker,
        product: row.product,
        shade: row.shade,
        code: row.printed?.code ?? null,
        useBy: row.printed?.useBy ?? null,
        pieces,
        containers,
        openedOn: row.openedOn,
        remainingMicrolitres,
        place: row.place,
        effects,
        setAside,
        faults: told.faults,
        warnings: told.warnings,
      }),
    ),
  };
}

export function countsOf(planned: readonly PlannedRow[]) {
  const having = (effect: StockEffect) => planned.filter(({ effects }) => effects.includes(effect)).length;
  const sound = planned.filter(({ faults }) => faults.length === 0);
  return {
    rows: planned.length,
    faultyRows: planned.length - sound.length,
    makers: having('new maker'),
    products: having('new product'),
    lots: having('new lot'),
    containers: sound.reduce((sum, { containers }) => sum + containers, 0),
  };
}
