/**
 * What stands in the way of a command or of the start, in words for whoever runs the program: what was seen, what is
 * allowed, what to do. Shown without a stack.
 */
export class OperatorError extends Error {}
