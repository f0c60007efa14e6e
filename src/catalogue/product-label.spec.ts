import { describe, expect, it } from 'vitest';
import { productLabel } from './product-label.js';

describe('the name of a product in words', () => {
  it('puts maker, product and shade after each other', () => {
    expect(productLabel({ makerName: 'Halden', productName: 'Ink', shade: 'Umber' })).toBe(
      'Halden Ink Umber',
    );
  });

  it('leaves out what there is not', () => {
    expect(productLabel({ makerName: 'Halden', productName: '1207RL', shade: null })).toBe('Halden 1207RL');
    expect(productLabel({ makerName: '', productName: '1207RL', shade: '' })).toBe('1207RL');
  });
});
