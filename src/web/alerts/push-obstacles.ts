/** Why this browser cannot be told of alerts while the app is closed. */
export const pushObstacles = [
  'insecure address',
  'not in this browser',
  'home screen first',
  'app not kept',
  'not allowed',
  'not answered',
  'not reached',
] as const;
export type PushObstacle = (typeof pushObstacles)[number];
