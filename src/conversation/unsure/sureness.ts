/**
 * Less sure than this of the whole reading, it is asked about. Chosen so that of messages that no weight was fitted to
 * at most one in ten is answered on a wrong reading, and less than one in five is asked about.
 */
export const leastSure = 0.62;

/**
 * The same where there is no rival that could be told in words: such a reading is right more often than its sureness
 * says, and an answer shows what it counted. Chosen on messages of authors that no weight was fitted to.
 */
export const leastSureAlone = 0.5;
