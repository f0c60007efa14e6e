import { expect, it } from 'vitest';
import { isShownAt } from './is-shown-at.js';

const recall = { id: 'A', subjectKind: 'recall', subjectId: 'R' };

it.each([
  ['/studios/s/alerts/A', recall, true],
  ['/studios/s/recalls/R', recall, true],
  ['/studios/s/recalls/R/containers', recall, true],
  ['/studios/s/recalls/RR', recall, false],
  ['/studios/s/today', recall, false],
  ['/studios/s/today', { id: 'A', subjectKind: 'studio', subjectId: 's' }, false],
])('of %s about %j says %s', (path, alert, isShown) => {
  expect(isShownAt(path, alert)).toBe(isShown);
});
