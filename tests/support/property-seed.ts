import fc from 'fast-check';
import { isFixed, seed } from './seed.js';

/** Set up before every file of tests. Where the seed is not fixed, each property draws its own and tells it when it fails. */
if (isFixed()) fc.configureGlobal({ seed: seed() });
