// Asks the service in this container whether it can work; exit code 0 when it can.
import http from 'node:http';
import https from 'node:https';
import { readConfig } from '../dist/src/platform/config.js';

const { HOST, PORT, tlsFiles } = readConfig(process.env);
const host = HOST === '0.0.0.0' || HOST === '::' ? 'localhost' : HOST;
const { get } = tlsFiles === undefined ? http : https;

get(
  // It asks itself, so whose certificate that is does not matter.
  { host, port: PORT, path: '/health/ready', headers: { host: 'localhost' }, rejectUnauthorized: false },
  ({ statusCode }) => process.exit(statusCode === 200 ? 0 : 1),
).on('error', () => process.exit(1));
