import { ServiceProblem } from '../service/problem.js';

/** What the service would say of amounts that cannot be read, so that it stands at their fields. */
export function unreadableAmounts(fields: readonly string[], message: string): ServiceProblem {
  return new ServiceProblem({
    status: 400,
    code: 'invalid-fields',
    title: message,
    detail: message,
    faults: fields.map((field) => ({ field, message })),
  });
}
