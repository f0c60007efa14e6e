import { describe, expect, it } from 'vitest';
import { withoutAdvice } from './beyond-cautions.js';

describe('a text of a notice without advice on health', () => {
  it.each([
    'Take an antihistamine.',
    'Patients should apply a cortisone cream.',
    'Please use ointment.',
    'Rinse the place with water.',
    'Wash your skin.',
    'Do not worry.',
    'There is no cause for concern.',
    'The pigment is harmless.',
    'No need to see a doctor.',
    'Laser removal helps.',
    'Take 200 mg daily.',
    'Nehmen Sie ein Antihistaminikum.',
    'Tragen Sie eine Salbe auf.',
    'Kühlen Sie die Stelle.',
    'Es besteht kein Grund zur Sorge.',
    'Das Pigment ist unbedenklich.',
  ])('leaves out: %s', (sentence) => {
    expect(withoutAdvice(`It may burn. ${sentence} Stop using it.`)).toEqual({
      text: 'It may burn. Stop using it.',
      leftOut: [sentence],
    });
  });

  it.each([
    'It holds germs that antibiotics do not stop.',
    'Use of the pigment with a numbing cream may burn the skin.',
    'The germ is resistant to disinfectants.',
    'Stop using it.',
    'See a doctor.',
    'Das Mittel kann mit Cremes reagieren.',
    'Return it for a refund.',
  ])('keeps a hazard, or what to do with the product: %s', (sentence) => {
    expect(withoutAdvice(sentence)).toEqual({ text: sentence, leftOut: [] });
  });
});
