/** How somebody came in. */
export type SignInMethod = 'password' | 'passkey' | 'one-time link' | 'badge' | 'PIN';
