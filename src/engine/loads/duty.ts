/** A fridge or freezer current up to this is what it averages; above it, what it draws while running (A at 12 V; common practice). */
export const averageCurrentLimitA = 2.5;

/** A mains thing told in more amps than a socket gives was measured at the battery (A). */
export const batterySideAboveA = 20;

/**
 * A fridge on 12 V that draws this much (W) or more may be a three-way one, which heats all the time: compressors of
 * camping fridges draw 30–90 W, the heaters of three-way ones 80–180 W. Common practice, from memory.
 */
export const threeWayFromW = 96;
