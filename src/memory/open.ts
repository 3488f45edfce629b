import type { KeptStore, StoreOptions } from './kept.ts';
import { keySource } from './keys.ts';

/**
 * Opens the store that DATABASE_URL names; only that one's code is loaded.
 * - `sqlite:data/memory.db` a file for one process; `?synchronous=full` survives a power cut to the last message
 * - `postgres://…` a server for any number of processes
 * - `memory:` nothing is kept
 * @throws Error in one clear line when it can't be opened; nothing is overwritten then
 */
export const openStore = async (url: string, options: StoreOptions = {}): Promise<KeptStore> => {
  const [, scheme, rest] = /^([a-z]+):(.*)$/s.exec(url) ?? [];
  switch (scheme) {
    case 'memory': {
      const { VolatileStore } = await import('./volatile/store.ts');
      return new VolatileStore(options);
    }
    case 'sqlite': {
      const { openSqlite } = await import('./sqlite/store.ts');
      const [path = '', query = ''] = rest?.replace(/^\/\//, '').split('?') ?? [];
      if (path === '') throw new Error('DATABASE_URL names no file: write sqlite:data/memory.db');
      const isFull = new URLSearchParams(query).get('synchronous') === 'full';
      return openSqlite(path, keySource(options), { ...options, isFull });
    }
    case 'postgres':
    case 'postgresql': {
      const { openPostgres } = await import('./postgres/store.ts');
      return openPostgres(url, keySource(options), options);
    }
    default:
      throw new Error('DATABASE_URL must start with sqlite:, postgres:// or memory:');
  }
};
