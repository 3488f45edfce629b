import { createCipheriv, createDecipheriv, createHmac, hkdfSync, randomBytes } from 'node:crypto';

/**
 * Encryption at rest. A sealed value is
 *   1 byte format (1) · 4 bytes key id · 12 bytes nonce · 16 bytes tag · ciphertext
 * by AES-256-GCM (NIST SP 800-38D) under a key derived from the master key (HKDF, RFC 5869). What the value
 * is about (its table and row) is associated data: a value moved to another row doesn't open.
 */
const format = 1;
const idEnd = 5;
const nonceEnd = 17;
const tagEnd = 33;

interface Key {
  readonly id: Buffer;
  readonly secret: Buffer;
}

const derive = (master: Buffer, purpose: string, length: number): Buffer =>
  Buffer.from(hkdfSync('sha256', master, '', `billywatt ${purpose}`, length));

const keyOf = (master: Buffer): Key => ({
  id: derive(master, 'key id', 4),
  secret: derive(master, 'seal', 32),
});

const aboutIndex = 'meta index';

/** Seals and opens values, and turns chat ids into what the database may know of them. */
export class Vault {
  readonly #keys: readonly Key[];
  readonly #newest: Key;
  #index: Buffer = Buffer.alloc(0);

  private constructor(masters: readonly Buffer[]) {
    this.#keys = masters.map(keyOf);
    const [newest] = this.#keys;
    if (!newest) throw new Error('no key was given to seal the memory with');
    this.#newest = newest;
  }

  /** A vault for a database that has none yet; keep its `sealedIndex` there. */
  static make(masters: readonly Buffer[]): Vault {
    const vault = new Vault(masters);
    vault.#index = randomBytes(32);
    return vault;
  }

  /**
   * The vault of a database that has one. @param masters newest first: it seals, all of them open
   * @throws Error when none of the keys opens it
   */
  static open(masters: readonly Buffer[], sealedIndex: Uint8Array): Vault {
    const vault = new Vault(masters);
    vault.#index = Buffer.from(vault.open(sealedIndex, aboutIndex), 'base64');
    return vault;
  }

  /** The secret behind `hash`, sealed with the newest key. It stays the same when keys change. */
  get sealedIndex(): Buffer {
    return this.seal(this.#index.toString('base64'), aboutIndex);
  }

  /** The id of the key that seals, 4 bytes; they stand in each sealed value from its second byte on. */
  get keyId(): Buffer {
    return this.#newest.id;
  }

  /** 16 bytes that stand for a chat id: the same each time, and of no use without the key. */
  hash(chat: string): Buffer {
    return createHmac('sha256', this.#index).update(chat).digest().subarray(0, 16);
  }

  seal(text: string, about: string): Buffer {
    const nonce = randomBytes(12);
    const cipher = createCipheriv('aes-256-gcm', this.#newest.secret, nonce).setAAD(Buffer.from(about));
    const body = cipher.update(text, 'utf8');
    cipher.final();
    return Buffer.concat([Buffer.of(format), this.#newest.id, nonce, cipher.getAuthTag(), body]);
  }

  /** @throws Error when no key fits, or the value was altered or belongs elsewhere */
  open(sealed: Uint8Array, about: string): string {
    const value = Buffer.from(sealed.buffer, sealed.byteOffset, sealed.byteLength);
    if (value[0] !== format || value.length < tagEnd) throw new Error('a sealed memory is damaged');
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
    decipher.setAAD(Buffer.from(about)).setAuthTag(value.subarray(nonceEnd, tagEnd));
    try {
      return decipher.update(value.subarray(tagEnd), undefined, 'utf8') + decipher.final('utf8');
    } catch {
      throw new Error('a sealed memory is damaged or was moved; nothing was changed');
    }
  }
}
