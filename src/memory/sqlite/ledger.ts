import { present } from '#basics/present.ts';
import type { Vault } from '../seal.ts';

const aboutLedger = 'meta ledger';

const revisionBytes = (revision: number): Buffer => {
  const bytes = Buffer.alloc(8);
  bytes.writeBigUInt64BE(BigInt(revision));
  return bytes;
};

/**
 * What the file is to hold: the secret marks of all its memories and moves, put together by exclusive or, kept
 * sealed in the same transaction as the rows. A row put back as it was before, added or taken out by somebody who has
 * the file but not the key makes the two differ. The whole file put back as it was does not: that is a backup.
 */
export class Ledger {
  readonly #vault: Vault;
  #sum: Buffer<ArrayBufferLike> = Buffer.alloc(16);
  #kept: Buffer<ArrayBufferLike> = Buffer.alloc(16);

  constructor(vault: Vault) {
    this.#vault = vault;
  }

  /** Whether it must be kept anew. */
  get isChanged(): boolean {
    return !this.#sum.equals(this.#kept);
  }

  /** The state now, for `back`. */
  get state(): Buffer {
    return Buffer.from(this.#sum);
  }

  /** As it was: what came after was undone. @param state none: as it was kept last */
  back(state?: Buffer): void {
    this.#sum = Buffer.from(state ?? this.#kept);
  }

  /** To be written beside the rows. */
  sealed(): Buffer {
    return this.#vault.seal(this.#sum.toString('base64'), aboutLedger);
  }

  /** It was written. */
  kept(): void {
    this.#kept = Buffer.from(this.#sum);
  }

  /** Whether it is what was written. @throws Damaged */
  isAs(sealed: Uint8Array): boolean {
    return Buffer.from(this.#vault.open(sealed, aboutLedger), 'base64').equals(this.#sum);
  }

  /** A memory at a revision comes, or goes. */
  memory(row: Uint8Array, revision: number): void {
    this.#turn(this.#vault.mark('m', row, revisionBytes(revision)));
  }

  /** A move comes, or goes. */
  move(old: Uint8Array, target: Uint8Array): void {
    this.#turn(this.#vault.mark('v', old, target));
  }

  #turn(mark: Buffer): void {
    for (let i = 0; i < 16; i++) this.#sum[i] = present(this.#sum[i]) ^ present(mark[i]);
  }
}
