import { describe, expect, it } from 'vitest';
import { contactState } from './contact-state.js';

describe('how it stands with telling a client', () => {
  it.each([
    ['not tried', false, 'not tried'],
    ['no answer', false, 'no answer'],
    ['not tried', true, 'erased, cannot be told'],
    ['message left', true, 'erased, cannot be told'],
    ['reached', true, 'reached'],
    ['refused', true, 'refused'],
    ['unreachable', true, 'unreachable'],
  ] as const)('after %s (erased: %s) is %s', (standing, erased, state) => {
    expect(contactState(standing, erased)).toBe(state);
  });
});
