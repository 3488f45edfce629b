import type { Chemistry, Solar } from '#rig/rig.ts';
import type { Assumption } from '../assumption.ts';

/** What is known of a panel's sun, mount and controller; everything may be missing. */
export interface SolarCase {
  readonly latitudeDeg?: number;
  readonly longitudeDeg?: number;
  /** Told height above the sea, m. */
  readonly heightM?: number;
  /** 1–12. */
  readonly month?: number;
  /** Whether the month was said, rather than taken from the calendar. */
  readonly isMonthTold?: boolean;
  /** Over how many days the sun is wanted, where not an average day of the month is: fewer days vary more. */
  readonly overDays?: number;
  /** Default flat. */
  readonly mount?: 'flat' | 'tilted';
  /** Default MPPT, said to be assumed. */
  readonly controller?: 'mppt' | 'pwm';
  /** Default mixed: the average of the climate. */
  readonly sky?: Sky;
  /** The panels as told: their volts matter to a PWM controller. */
  readonly panels?: readonly Solar[];
  /** Of the battery that they charge; default AGM. */
  readonly chemistry?: Chemistry;
  /** 12 V blocks that the battery is made of: 1, 2, 4. Default 1. */
  readonly blocks?: number;
  readonly shade?: 'none' | 'half' | 'heavy';
  /** Told by the person: replaces the model of the sun. */
  readonly peakSunHours?: number;
  /** What readings have taught of the yield, as % of what is reckoned. */
  readonly learned?: Assumption;
  /** Daytime air temperature, °C. */
  readonly ambientC?: number;
}

export type Sky = 'sunny' | 'mixed' | 'overcast';
