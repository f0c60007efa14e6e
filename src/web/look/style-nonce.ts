/** The nonce by which the content policy lets styles be written into this very page. */
export const styleNonce = document.querySelector<HTMLMetaElement>('meta[property="csp-nonce"]')?.nonce ?? '';

// The library that holds the page still behind a dialog looks for the nonce under this name.
Object.assign(globalThis, { __webpack_nonce__: styleNonce });
