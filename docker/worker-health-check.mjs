// Looks whether the worker in this container can work; exit code 0 when it can.
import { gaveSignOfLife } from '../dist/src/platform/sign-of-life.js';

process.exit(gaveSignOfLife() ? 0 : 1);
