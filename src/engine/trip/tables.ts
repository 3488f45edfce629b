/** Hours of the day at which a thing is usually switched on; a day's hours are split evenly over them. Common practice. */
export const switchedOnAt: Readonly<Record<string, readonly number[]>> = {
  light: [18],
  lamp: [18],
  'led strip': [18],
  tv: [19],
  projector: [19],
  radio: [8, 17],
  laptop: [9, 19],
  tablet: [19],
  phone: [20],
  camera: [19],
  drone: [12],
  'satellite dish': [18],
  'game console': [19],
  fan: [12],
  'roof fan': [12],
  'ceiling fan': [12],
  'air conditioner': [13],
  cpap: [22],
  'oxygen concentrator': [22],
  'electric blanket': [21],
  'diesel heater': [19, 6],
  heater: [19, 6],
  'portable heater': [19, 6],
  'water pump': [7, 12, 18],
  pump: [7, 12, 18],
  'water heater': [7, 18],
  kettle: [7, 10, 16],
  'coffee machine': [7, 10],
  toaster: [7],
  'sandwich press': [12],
  microwave: [7, 12, 18],
  'induction hob': [7, 18],
  'air fryer': [18],
  'slow cooker': [12],
  'rice cooker': [18],
  frypan: [18],
  oven: [18],
  blender: [8],
  'hair dryer': [8],
  'hair straightener': [8],
  'washing machine': [10],
  vacuum: [10],
  'drill charger': [12],
  'power tool': [10],
  compressor: [10],
  toilet: [7, 13, 21],
};

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
