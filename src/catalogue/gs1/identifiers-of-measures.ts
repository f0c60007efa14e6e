import { type ApplicationIdentifierRow, exactly } from './application-identifier-format.js';

/**
 * Application identifiers 3100 to 3695: measures. The fourth digit says how many of the six digits stand after
 * the decimal point, 0 to 5.
 * Facts (not text) of the GS1 Barcode Syntax Dictionary, Apache-2.0, (c) 2020-2021 BWIPP project, 2020-2021
 * Zint Project, 2021-2025 GS1 AISBL [P].
 */
export const identifiersOfMeasures: readonly ApplicationIdentifierRow[] = [
  ofTradeItem('310', 'NET WEIGHT (kg)'),
  ofTradeItem('311', 'LENGTH (m)'),
  ofTradeItem('312', 'WIDTH (m)'),
  ofTradeItem('313', 'HEIGHT (m)'),
  ofTradeItem('314', 'AREA (m²)'),
  ofTradeItem('315', 'NET VOLUME (l)'),
  ofTradeItem('316', 'NET VOLUME (m³)'),
  ofTradeItem('320', 'NET WEIGHT (lb)'),
  ofTradeItem('321', 'LENGTH (in)'),
  ofTradeItem('322', 'LENGTH (ft)'),
  ofTradeItem('323', 'LENGTH (yd)'),
  ofTradeItem('324', 'WIDTH (in)'),
  ofTradeItem('325', 'WIDTH (ft)'),
  ofTradeItem('326', 'WIDTH (yd)'),
  ofTradeItem('327', 'HEIGHT (in)'),
  ofTradeItem('328', 'HEIGHT (ft)'),
  ofTradeItem('329', 'HEIGHT (yd)'),
  ofLogisticUnit('330', 'GROSS WEIGHT (kg)'),
  ofLogisticUnit('331', 'LENGTH (m), log'),
  ofLogisticUnit('332', 'WIDTH (m), log'),
  ofLogisticUnit('333', 'HEIGHT (m), log'),
  ofLogisticUnit('334', 'AREA (m²), log'),
  ofLogisticUnit('335', 'VOLUME (l), log'),
  ofLogisticUnit('336', 'VOLUME (m³), log'),
  measure('337', 'KG PER m²', ['01']),
  ofLogisticUnit('340', 'GROSS WEIGHT (lb)'),
  ofLogisticUnit('341', 'LENGTH (in), log'),
  ofLogisticUnit('342', 'LENGTH (ft), log'),
  ofLogisticUnit('343', 'LENGTH (yd), log'),
  ofLogisticUnit('344', 'WIDTH (in), log'),
  ofLogisticUnit('345', 'WIDTH (ft), log'),
  ofLogisticUnit('346', 'WIDTH (yd), log'),
  ofLogisticUnit('347', 'HEIGHT (in), log'),
  ofLogisticUnit('348', 'HEIGHT (ft), log'),
  ofLogisticUnit('349', 'HEIGHT (yd), log'),
  ofTradeItem('350', 'AREA (in²)'),
  ofTradeItem('351', 'AREA (ft²)'),
  ofTradeItem('352', 'AREA (yd²)'),
  ofLogisticUnit('353', 'AREA (in²), log'),
  ofLogisticUnit('354', 'AREA (ft²), log'),
  ofLogisticUnit('355', 'AREA (yd²), log'),
  ofTradeItem('356', 'NET WEIGHT (tr oz)'),
  ofTradeItem('357', 'NET VOLUME (oz)'),
  ofTradeItem('360', 'NET VOLUME (qt (US))'),
  ofTradeItem('361', 'NET VOLUME (gal.)'),
  ofLogisticUnit('362', 'VOLUME (qt (US)), log'),
  ofLogisticUnit('363', 'VOLUME (gal (US)), log'),
  ofTradeItem('364', 'NET VOLUME (in³)'),
  ofTradeItem('365', 'NET VOLUME (ft³)'),
  ofTradeItem('366', 'NET VOLUME (yd³)'),
  ofLogisticUnit('367', 'VOLUME (in³), log'),
  ofLogisticUnit('368', 'VOLUME (ft³), log'),
  ofLogisticUnit('369', 'VOLUME (yd³), log'),
];

function ofTradeItem(firstThreeDigits: string, title: string): ApplicationIdentifierRow {
  return measure(firstThreeDigits, title, ['01', '02']);
}

function ofLogisticUnit(firstThreeDigits: string, title: string): ApplicationIdentifierRow {
  return measure(firstThreeDigits, title, ['00', '01']);
}

/** One measure may be given once, in one precision: it excludes its own other precisions. */
function measure(
  firstThreeDigits: string,
  title: string,
  requires: readonly string[],
): ApplicationIdentifierRow {
  return {
    first: `${firstThreeDigits}0`,
    last: `${firstThreeDigits}5`,
    title,
    components: [exactly(6, 'N')],
    predefinedLength: true,
    digitalLinkAttribute: true,
    requires,
    excludes: [`${firstThreeDigits}n`],
  };
}
