/** Usable stock of each evening, from day 0: what it is below with the chance in the name. */
export interface Fan {
  at5: Int32Array;
  at25: Int32Array;
  at50: Int32Array;
  at75: Int32Array;
  at95: Int32Array;
}
