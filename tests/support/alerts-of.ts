import { AlertHistory } from '../../src/alerts/alert-history.service.js';
import { AlertSteps } from '../../src/alerts/alert-steps.service.js';
import { Alerts } from '../../src/alerts/alerts.service.js';
import { ConditionEvaluators } from '../../src/alerts/condition-evaluators.service.js';
import { Promises } from '../../src/alerts/outbox/promises.service.js';
import { ToldPeople } from '../../src/alerts/preferences/told-people.service.js';
import type { Store } from './store.js';

/** The steps of alerts on an open store. */
export function alertStepsOf(store: Store, evaluators = new ConditionEvaluators()): AlertSteps {
  return new AlertSteps(
    new AlertHistory(store.database, store.dataKeys, evaluators),
    new Promises(new ToldPeople()),
  );
}

/** The alerts of an open store, judged by the evaluators given. */
export function alertsOf(store: Store, evaluators = new ConditionEvaluators()): Alerts {
  return new Alerts(evaluators, alertStepsOf(store, evaluators));
}
