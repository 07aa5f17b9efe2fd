/** Thrown when a path on the command line cannot be read or written. */
export class UnreadablePath extends Error {}
