/** A thing without a row runs from here on, where it doesn't run all day. */
export const eveningHour = 18;

/** How far the air round a fridge in a car or a tent swings above and below its mean over a day, K, and the hour of its peak. Common practice. */
export const dailySwing = { kelvin: 3, peakHour: 15 } as const;

/** Hour at which a day's driving starts, where nobody said. Common practice. */
export const drivingFromHour = 9;

/** Hour at which a trip starts, where nobody said: arrived at camp in the afternoon, battery full. Common practice. */
export const arrivalHour = 16;

/** Share of a day's sun that each daylight hour loses to trees, hills and glancing light; the rest keeps the day's sum. Common practice. */
export const lowSunShare = 0.02;

/** Hour at which a day's run of a generator starts, where nobody said: before dinner, and before quiet hours. Common practice. */
export const generatorFromHour = 16;

/** Hour at which a night on mains starts: arrived, plugged in. It is over, unplugged, when the drive starts. Common practice. */
export const mainsFromHour = 18;
