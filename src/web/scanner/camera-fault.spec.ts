import { expect, it } from 'vitest';
import { cameraFault } from './camera-fault.js';

it.each([
  ['NotAllowedError', 'refused'],
  ['SecurityError', 'refused'],
  ['NotFoundError', 'absent'],
  ['OverconstrainedError', 'absent'],
  [undefined, 'absent'],
  ['NotReadableError', 'in use'],
  ['AbortError', 'in use'],
  ['TypeError', 'unknown'],
])('tells from %s that the camera is %s', (name, fault) => {
  expect(cameraFault(name, true)).toBe(fault);
});

it('says that HTTPS is needed before anything else, for without it no browser has a camera', () => {
  expect(cameraFault(undefined, false)).toBe('insecure');
  expect(cameraFault('NotAllowedError', false)).toBe('insecure');
});
