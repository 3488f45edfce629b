import type { FitOptions } from './lessons.ts';
import { Parameters } from './net.ts';

/** Hidden units over sparse features, with dropped features while learning. */
export class Trunk {
  readonly D: number;
  E: Parameters;
  readonly B: Parameters;
  readonly h: Float32Array;
  readonly dh: Float32Array;
  #mask = new Uint8Array(1024);
  readonly #random: () => number;
  readonly #o: FitOptions;

  constructor(size: number, o: FitOptions, random: () => number) {
    this.D = o.units;
    this.E = new Parameters(size * o.units, 0.03, random);
    this.B = new Parameters(o.units, 0, random);
    this.h = new Float32Array(o.units);
    this.dh = new Float32Array(o.units);
    this.#random = random;
    this.#o = o;
  }

  forward(f: Int32Array): void {
    const { D, E, B, h } = this;
    const { drop } = this.#o;
    if (f.length > this.#mask.length) this.#mask = new Uint8Array(f.length * 2);
    const mask = this.#mask;
    const scale = 1 / (1 - drop);
    const { w } = E;
    h.set(B.w);
    for (let k = 0; k < f.length; k++) {
      mask[k] = this.#random() >= drop ? 1 : 0;
      if (!mask[k]) continue;
      const from = f[k]! * D;
      for (let d = 0; d < D; d++) h[d]! += w[from + d]! * scale;
    }
    for (let d = 0; d < D; d++) h[d] = Math.tanh(h[d]!);
    this.dh.fill(0);
  }

  backward(f: Int32Array): void {
    const { D, E, B, h, dh } = this;
    const { drop, l2, rate } = this.#o;
    const scale = 1 / (1 - drop);
    const mask = this.#mask;
    for (let d = 0; d < D; d++) {
      dh[d]! *= 1 - h[d]! * h[d]!;
      B.step(d, dh[d]!, rate);
      dh[d]! *= scale;
    }
    for (let k = 0; k < f.length; k++) if (mask[k]) E.stepRow(f[k]! * D, dh, l2, rate);
  }

  prune(to: Int32Array): void {
    this.E = this.E.rows(this.D, to);
  }
}
