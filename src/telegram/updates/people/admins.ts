import type { Api } from 'grammy';

const keptForMs = 5 * 60_000;
const mostKept = 5000;

/** Asks Telegram who runs a group, and remembers it for five minutes. When in doubt: not an admin. */
export class Admins {
  readonly #known = new Map<string, { readonly isAdmin: boolean; readonly until: number }>();
  readonly #api: Api;
  readonly #now: () => number;

  constructor(api: Api, now: () => number) {
    this.#api = api;
    this.#now = now;
  }

  /** Whether a person may change what belongs to the whole chat. */
  async has(chat: number, person: number): Promise<boolean> {
    const key = `${chat} ${person}`;
    const known = this.#known.get(key);
    if (known !== undefined && known.until > this.#now()) return known.isAdmin;
    let isAdmin = false;
    try {
      const { status } = await this.#api.getChatMember(chat, person);
      isAdmin = status === 'creator' || status === 'administrator';
    } catch {
      return false;
    }
    if (this.#known.size >= mostKept) this.#known.clear();
    this.#known.set(key, { isAdmin, until: this.#now() + keptForMs });
    return isAdmin;
  }
}
