export const labelSheetNames = ['A4 sheet', 'roll'] as const;
export type LabelSheetName = (typeof labelSheetNames)[number];

export interface LabelSheet {
  pageWidthMillimetres: number;
  pageHeightMillimetres: number;
  labelWidthMillimetres: number;
  labelHeightMillimetres: number;
  columns: number;
  rows: number;
  /** Where the first label begins. */
  leftMillimetres: number;
  topMillimetres: number;
  /** From one label to the next. */
  columnStepMillimetres: number;
  rowStepMillimetres: number;
}

/**
 * The sheets labels are printed on: A4 with 65 labels of 38.1 × 21.2 mm, a size sold everywhere [C], and a roll of
 * 25 × 13 mm, which fits around a 10 mL bottle [C], one label a page.
 */
export const labelSheets: Readonly<Record<LabelSheetName, LabelSheet>> = {
  'A4 sheet': {
    pageWidthMillimetres: 210,
    pageHeightMillimetres: 297,
    labelWidthMillimetres: 38.1,
    labelHeightMillimetres: 21.2,
    columns: 5,
    rows: 13,
    leftMillimetres: 4.75,
    topMillimetres: 10.7,
    columnStepMillimetres: 40.6,
    rowStepMillimetres: 21.2,
  },
  roll: {
    pageWidthMillimetres: 25,
    pageHeightMillimetres: 13,
    labelWidthMillimetres: 25,
    labelHeightMillimetres: 13,
    columns: 1,
    rows: 1,
    leftMillimetres: 0,
    topMillimetres: 0,
    columnStepMillimetres: 25,
    rowStepMillimetres: 13,
  },
};

export interface LabelPosition {
  /** From 0. */
  page: number;
  /** Upper left corner of the label on its page. */
  leftMillimetres: number;
  topMillimetres: number;
}

/** How many labels a page of a sheet holds. */
export function labelsPerPage(sheet: LabelSheet): number {
  return sheet.columns * sheet.rows;
}

/**
 * Where labels are printed, row by row from the position of the first on its page, counted from 1: a sheet used in
 * part can go through the printer again.
 *
 * @throws RangeError when the page has no such position
 */
export function labelPositions(sheet: LabelSheet, count: number, startAt: number): LabelPosition[] {
  const perPage = labelsPerPage(sheet);
  if (!Number.isInteger(startAt) || startAt < 1 || startAt > perPage) {
    throw new RangeError(`A page has the positions 1 to ${perPage}, so ${startAt} is none.`);
  }
  return Array.from({ length: count }, (_, index) => {
    const place = startAt - 1 + index;
    const onPage = place % perPage;
    return {
      page: Math.floor(place / perPage),
      leftMillimetres: sheet.leftMillimetres + (onPage % sheet.columns) * sheet.columnStepMillimetres,
      topMillimetres: sheet.topMillimetres + Math.floor(onPage / sheet.columns) * sheet.rowStepMillimetres,
    };
  });
}

/** Clear space around a symbol: its standard asks for one module, scanners at an angle for more. */
export const quietZoneMillimetres = 1;
/** Smaller modules are not read reliably from a label printer of 203 dots an inch [C]. */
export const leastModuleMillimetres = 0.25;

/** The size of a module by which a symbol of so many modules a side fits a label and leaves room for its text. */
export function moduleMillimetres(sheet: LabelSheet, modulesASide: number): number {
  const height = sheet.labelHeightMillimetres - 2 * quietZoneMillimetres;
  const widthBesideText = sheet.labelWidthMillimetres * 0.36;
  const wanted = sheet.labelHeightMillimetres > 20 ? 0.42 : 0.3;
  return Math.max(
    leastModuleMillimetres,
    Math.min(wanted, height / modulesASide, widthBesideText / modulesASide),
  );
}
