/** The budget of work: steps are counted, the clock is never read, so the same list gives the same plan everywhere. */
export class Work {
  done = 0;

  constructor(private limit: number) {}

  get spent(): boolean {
    return this.done >= this.limit;
  }

  get left(): number {
    return Math.max(0, this.limit - this.done);
  }

  /** Runs with at most `steps` more steps, and never more than are left. */
  within<T>(steps: number, run: () => T): T {
    const outer = this.limit;
    this.limit = Math.min(outer, this.done + steps);
    try {
      return run();
    } finally {
      this.limit = outer;
    }
  }
}

/** Random numbers from 0 to 1 that are the same on every machine (xorshift). */
export function randomSource(seed: number): () => number {
  let state = seed | 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 4294967296;
  };
}

/** Greatest common divisor of two whole numbers. */
export function commonDivisor(a: number, b: number): number {
  while (b > 0) [a, b] = [b, a % b];
  return a;
}
