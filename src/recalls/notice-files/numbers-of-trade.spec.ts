import { describe, expect, it } from 'vitest';
import { numbersOfTrade } from './numbers-of-trade.js';

/** GTINs of GS1's example range, 950. */
describe('numbers of trade', () => {
  it.each([
    ['9501101530003', ['09501101530003']],
    ['EAN 9 501101 530003', ['09501101530003']],
    ['9501101-530003; 95011015', ['09501101530003']],
    ['09501101530003, 9501101530003', ['09501101530003']],
    ['9501101530003 9501101020917', ['09501101530003', '09501101020917']],
    ['9501101530003 1', ['09501101530003']],
    ['9501101530003 and 9501101020917', ['09501101530003', '09501101020917']],
  ])('are found in %s', (text, numbers) => {
    expect(numbersOfTrade(text)).toEqual(numbers);
  });

  it.each(['', 'Unknown', '9501101530004', '1234567', 'batch 07110002', '950110153000312345'])(
    'are none in %s',
    (text) => {
      expect(numbersOfTrade(text)).toEqual([]);
    },
  );
});
