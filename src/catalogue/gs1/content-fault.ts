/** What is wrong inside a component: where (0-based, in characters of the component) and what may stand there. */
export type ContentFault = { readonly offset: number; readonly length: number; readonly allowed: string };
