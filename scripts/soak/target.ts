/** What the soak throws at, and how it judges what comes back. */

export interface Find {
  readonly what: string;
  readonly given: unknown;
}

export interface Target {
  readonly name: string;
  /** Throws a batch drawn with a seed; says how many calls that was and what it found. */
  readonly soak: (seed: number) => Promise<{ calls: number; finds: Find[] }>;
}

/** Milliseconds of processor time, which other programs on the machine hardly lengthen. */
export function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** Longest time that a call may take, in milliseconds: a sheet recalculates hundreds. */
export const LONGEST_CALL = 250;

/** What is wrong with the time that a call took, or undefined. */
export function timeFlaw(time: number, longest = LONGEST_CALL): string | undefined {
  return time > longest ? `${time.toFixed(0)} ms` : undefined;
}
