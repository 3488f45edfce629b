import {
  createCipheriv,
  createDecipheriv,
  createHmac,
  createSecretKey,
  hash,
  hkdfSync,
  type KeyObject,
  randomBytes,
} from 'node:crypto';
import { deflateRawSync, inflateRawSync } from 'node:zlib';
import { dropOldest } from '#basics/oldest.ts';
import { Damaged } from '#conversation/memory-store.ts';

/**
 * Encryption at rest. A sealed value is
 *   1 byte format · 4 bytes key id · 12 bytes nonce · 16 bytes tag · ciphertext
 * of a text as it is (format 1) or, where it is long, deflated (format 2, RFC 1951),
 * by AES-256-GCM (NIST SP 800-38D) under a key derived from the master key (HKDF, RFC 5869). What the value
 * is about (its table, row and revision) is associated data: a value moved to another row, or an old one put
 * back, doesn't open.
 */
const plainFormat = 1;
const packedFormat = 2;
/**
 * From so many characters on a text is packed: the memory of a chat of twenty is a sixth of its length then, and a usual
 * chat's costs nothing for it.
 */
const leastPacked = 4096;
/** A small window: a memory repeats itself within a few lines, and a big one costs more to set up than it saves. */
const packing = { level: 1, windowBits: 12, memLevel: 4 } as const;
/** More than any memory that is written. */
const mostUnpacked = 4_000_000;
const idEnd = 5;
const nonceEnd = 17;
const tagEnd = 33;

interface Key {
  readonly id: Buffer;
  readonly secret: KeyObject;
}

const derive = (master: Buffer, purpose: string, length: number): Buffer =>
  Buffer.from(hkdfSync('sha256', master, '', `billywatt ${purpose}`, length));

const keyOf = (master: Buffer): Key => ({
  id: derive(master, 'key id', 4),
  secret: createSecretKey(derive(master, 'seal', 32)),
});

/** What a value is about, with its format where that isn't the plain one: one can't be passed off as the other. */
const bound = (about: string, format: number): Buffer =>
  Buffer.from(format === plainFormat ? about : `${about}, packed`);

/** The index of a database whose memories are bound to their revisions, and of one from before. */
const aboutIndex = 'meta index 2';
const aboutFormerIndex = 'meta index';

/** Chats whose hash is held ready; it is asked for several times a message. */
const mostHeld = 5000;

/** Seals and opens values, and turns chat ids into what the database may know of them. */
export class Vault {
  readonly #keys: readonly Key[];
  readonly #newest: Key;
  readonly #held = new Map<string, Buffer>();
  #index: Buffer = Buffer.alloc(0);
  #markSecret: Buffer = Buffer.alloc(0);
  #isBound = true;

  private constructor(masters: readonly Buffer[]) {
    this.#keys = masters.map(keyOf);
    const [newest] = this.#keys;
    if (!newest) throw new Error('no key was given to seal the memory with');
    this.#newest = newest;
  }

  #take(index: Buffer): void {
    this.#index = index;
    this.#markSecret = createHmac('sha256', index).update('marks').digest();
  }

  /** A vault for a database that has none yet; keep its `sealedIndex` there. */
  static make(masters: readonly Buffer[]): Vault {
    const vault = new Vault(masters);
    vault.#take(randomBytes(32));
    return vault;
  }

  /**
   * The vault of a database that has one. @param masters newest first: it seals, all of them open
   * @throws Error when none of the keys opens it
   */
  static open(masters: readonly Buffer[], sealedIndex: Uint8Array): Vault {
    const vault = new Vault(masters);
    const opened = (about: string): void =>
      vault.#take(Buffer.from(vault.open(sealedIndex, about), 'base64'));
    try {
      opened(aboutIndex);
    } catch (error) {
      if (!(error instanceof Damaged)) throw error;
      opened(aboutFormerIndex);
      vault.#isBound = false;
    }
    return vault;
  }

  /** Whether memories are bound to their revisions; else they have to be sealed anew, and the index kept. */
  get isBound(): boolean {
    return this.#isBound;
  }

  /** All memories are bound now. */
  bound(): void {
    this.#isBound = true;
  }

  /** The secret behind `hash`, sealed with the newest key. It stays the same when keys change. */
  get sealedIndex(): Buffer {
    return this.seal(this.#index.toString('base64'), this.#isBound ? aboutIndex : aboutFormerIndex);
  }

  /** The id of the key that seals, 4 bytes; they stand in each sealed value from its second byte on. */
  get keyId(): Buffer {
    return this.#newest.id;
  }

  /** 16 bytes that stand for a chat id: the same each time, and of no use without the key. Not to be written to. */
  hash(chat: string): Buffer {
    const held = this.#held.get(chat);
    if (held) return held;
    const made = createHmac('sha256', this.#index).update(chat).digest().subarray(0, 16);
    if (this.#held.size >= mostHeld) dropOldest(this.#held);
    this.#held.set(chat, made);
    return made;
  }

  /**
   * 16 bytes that stand for some bytes of a fixed length, which only who has the key can reckon.
   * @param purpose one letter, so that marks of one kind are none of another
   */
  mark(purpose: string, ...parts: readonly Uint8Array[]): Buffer {
    const all = Buffer.concat([this.#markSecret, Buffer.from(purpose), ...parts]);
    return hash('sha256', all, 'buffer').subarray(0, 16);
  }

  /** The seal of a move, by which others can't make one. */
  moveSeal(old: Uint8Array, target: Uint8Array): Buffer {
    return this.mark('s', old, target);
  }

  /** @throws Damaged where the bot did not make the move */
  checkMove(old: Uint8Array, target: Uint8Array, seal: Uint8Array | null): void {
    if (seal === null || !this.moveSeal(old, target).equals(seal))
      throw new Damaged('a move of a chat was made from outside; nothing was changed');
  }

  seal(text: string, about: string): Buffer {
    const nonce = randomBytes(12);
    const format = text.length < leastPacked ? plainFormat : packedFormat;
    const cipher = createCipheriv('aes-256-gcm', this.#newest.secret, nonce).setAAD(bound(about, format));
    const body =
      format === plainFormat ? cipher.update(text, 'utf8') : cipher.update(deflateRawSync(text, packing));
    cipher.final();
    return Buffer.concat([Buffer.of(format), this.#newest.id, nonce, cipher.getAuthTag(), body]);
  }

  /** @throws Damaged when it was altered or belongs elsewhere; Error when no key fits */
  open(sealed: Uint8Array, about: string): string {
    const value = Buffer.from(sealed.buffer, sealed.byteOffset, sealed.byteLength);
    const [format] = value;
    if ((format !== plainFormat && format !== packedFormat) || value.length < tagEnd)
      throw new Damaged('a sealed memory is damaged');
    const id = value.subarray(1, idEnd);
    const key = this.#keys.find(one => one.id.equals(id));
    if (!key)
      throw new Error(
        `the memory can't be opened with this key: it was sealed with key ${id.toString('hex')}, ` +
          `the given one is ${this.#newest.id.toString('hex')}`,
      );
    const decipher = createDecipheriv('aes-256-gcm', key.secret, value.subarray(idEnd, nonceEnd), {
      authTagLength: 16,
    });
    decipher.setAAD(bound(about, format)).setAuthTag(value.subarray(nonceEnd, tagEnd));
    try {
      const body = value.subarray(tagEnd);
      if (format === plainFormat) return decipher.update(body, undefined, 'utf8') + decipher.final('utf8');
      const packed = decipher.update(body);
      decipher.final();
      return inflateRawSync(packed, { maxOutputLength: mostUnpacked }).toString('utf8');
    } catch {
      throw new Damaged('a sealed memory is damaged, or was moved or put back; nothing was changed');
    }
  }
}
