/** A place on earth that people camp at or name: town, region, park or country. */
export interface Place {
  readonly name: string;
  /** ISO 3166-1 alpha-2; "EU" for a region of several European countries. */
  readonly country: string;
  /** State or province where the country is told by them (US, Canada, Australia): "TN". */
  readonly state?: string;
  readonly latitudeDeg: number;
  readonly longitudeDeg: number;
  /** The name is an everyday word too ("orange", "bath"): only words such as "near" or "in" make it a place. */
  readonly isWord?: boolean;
  /** So much smaller than another place of its name that nobody means it who doesn't tell its state or country. */
  readonly isMinor?: boolean;
}
