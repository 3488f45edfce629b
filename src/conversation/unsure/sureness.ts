/**
 * Less sure than this of the whole reading, it is asked about. Chosen so that of messages that no weight was fitted to
 * at most one in ten is answered on a wrong reading, and less than one in five is asked about.
 */
export const leastSure = 0.68;
