/** Lets a test wait for something that calls bring about: whoever changes says so, and all waiting look again. */
export class Watch {
  readonly #looks = new Set<() => void>();

  /** Settles once the condition holds; rejects after the time. */
  until(condition: () => boolean, what: string, withinMs: number): Promise<void> {
    return new Promise((resolve, reject) => {
      const end = (finish: () => void) => {
        clearTimeout(timer);
        this.#looks.delete(look);
        finish();
      };
      const look = () => condition() && end(resolve);
      const timer = setTimeout(() => end(() => reject(new Error(`never saw: ${what}`))), withinMs);
      this.#looks.add(look);
      look();
    });
  }

  changed(): void {
    for (const look of [...this.#looks]) look();
  }
}
