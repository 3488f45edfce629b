/** Where features go: a list of numbers while learning, a `FeatureList` while reading. */
export interface Features {
  push(feature: number): unknown;
}

/** Features in a buffer that is used over and over: reading is synchronous, so that one list serves all that fill and use it in one go. */
export class FeatureList implements Features {
  values = new Int32Array(256);
  count = 0;

  push(feature: number): void {
    if (this.count === this.values.length) {
      const wider = new Int32Array(this.count * 2);
      wider.set(this.values);
      this.values = wider;
    }
    this.values[this.count++] = feature;
  }

  /** Empties it, for the next features. */
  clear(): this {
    this.count = 0;
    return this;
  }

  equals(values: Int32Array): boolean {
    if (values.length !== this.count) return false;
    for (let i = 0; i < values.length; i++) if (values[i] !== this.values[i]) return false;
    return true;
  }

  taken(): Int32Array {
    return this.values.slice(0, this.count);
  }
}

/** The list for features that are summed as soon as they are listed. */
export const scratch = new FeatureList();
