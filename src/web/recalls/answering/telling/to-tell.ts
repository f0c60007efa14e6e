import type { Addressee } from './addressee.js';

/** Somebody who is to be told, and what they are called on the page. */
export interface ToTell {
  addressee: Addressee;
  name: string;
}
