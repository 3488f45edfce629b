/** What of hours, Ah or a share is binary dust: sums of tenths come no nearer. No fact of the world; no answer shows it. */
export const dust = 1e-9;

/** How near a round number a figure may be and still be it: 125 % of 20 A is 25 A, in binary too. */
export const nearlyRound = 1e-6;

/** How near the trip's searches come, as a share: sizes are said rounder than that. */
export const nearEnough = 0.005;
