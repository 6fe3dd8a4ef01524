/** What server.mjs offers to programs in TypeScript. */

/** Starts serving. `port` 0 takes any free one; `start` is the page that / leads to. */
export function serve(options: {
  folder: string;
  port: number;
  start?: string;
}): Promise<{ address: string; port: number; usualPort: boolean; close(): Promise<void> }>;
