/** What the page asks the worker that reads symbols: a picture of the camera, or a photo as a file. */
export type ReadRequest = { id: number } & ({ frame: ImageBitmap } | { photo: Blob });

/** Its answer. A symbol is its text with the symbology identifier in front, such as `]d2`. */
export type ReadAnswer = { id: number } & ({ symbols: string[] } | { failed: ReadFailure });

/** The file is no picture this browser knows; or the reader itself could not be started. */
export type ReadFailure = 'no picture' | 'no reader';
