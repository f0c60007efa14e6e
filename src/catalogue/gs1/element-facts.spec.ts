import { describe, expect, it } from 'vitest';
import { factsOf } from './element-facts.js';
import { parseElementString } from './element-string.js';

const gtin = '09506000134352';

function facts(text: string): ReturnType<typeof factsOf> {
  const { elements, errors } = parseElementString(text, { today: '2026-03-01' });
  expect(errors).toEqual([]);
  return factsOf(elements, 2026);
}

describe('the facts in elements', () => {
  it('are named in the words of the trade, and absent when their identifier is', () => {
    expect(
      facts(`(01)${gtin}(17)270200(15)270131(11)250131(13)250201(16)261231(10)AB(21)S1(20)07(22)V2`),
    ).toEqual({
      gtin14: gtin,
      useBy: { date: '2027-02-28', precision: 'month' },
      bestBefore: { date: '2027-01-31', precision: 'day' },
      producedOn: { date: '2025-01-31', precision: 'day' },
      packedOn: { date: '2025-02-01', precision: 'day' },
      sellBy: { date: '2026-12-31', precision: 'day' },
      lotCode: 'AB',
      serial: 'S1',
      productVariant: '07',
      consumerProductVariant: 'V2',
    });
  });

  it('keep what is in an outer box apart from the box', () => {
    expect(facts(`(00)095060001343500002(02)${gtin}(37)0012`)).toEqual({
      shippingContainerCode: '095060001343500002',
      contentGtin14: gtin,
      count: 12,
    });
  });

  it('give a use-by moment its time', () => {
    expect(facts(`(01)${gtin}(7003)2701311230(30)3(240)AP(241)CP(250)S2(21)S1`)).toEqual({
      gtin14: gtin,
      useByMoment: { date: '2027-01-31', time: '12:30' },
      variableCount: 3,
      additionalProductIdentification: 'AP',
      customerPartNumber: 'CP',
      secondarySerial: 'S2',
      serial: 'S1',
    });
    expect(facts(`(01)${gtin}(235)TP`)).toEqual({ gtin14: gtin, thirdPartySerial: 'TP' });
  });
});
