/**
 * One tab at a time works on a kept sheet. The tab that does holds a lock of the browser; another that wants the sheet asks
 * it to hand over, so that no tab ever overwrites what another has kept.
 */

/** How long a tab that was asked may take to keep its last change, in milliseconds; a hung one is passed over. */
const PATIENCE = 2000;

interface Handover {
  id: string;
}

export class SheetLock {
  private readonly channel = new BroadcastChannel("piecewise");
  private release: (() => void) | undefined;

  /**
   * @param id of the sheet
   * @param lost called when another tab has asked for the sheet: keeps the last change, then stops working on it
   */
  constructor(
    private readonly id: string,
    private readonly lost: () => Promise<void>,
  ) {
    this.channel.onmessage = ({ data }: MessageEvent<Handover>) => {
      if (data.id === this.id && this.release) void this.handOver();
    };
  }

  /** Whether this tab may now work on the sheet; false where another tab does. */
  async take(): Promise<boolean> {
    return this.request({ ifAvailable: true });
  }

  /** Asks the other tab to hand over and waits until it has. */
  async takeOver(): Promise<void> {
    if (this.release) return;
    this.channel.postMessage({ id: this.id } satisfies Handover);
    const patience = new AbortController();
    const timer = setTimeout(() => {
      patience.abort();
    }, PATIENCE);
    try {
      await this.request({ signal: patience.signal });
    } catch {
      await this.request({ steal: true });
    } finally {
      clearTimeout(timer);
    }
  }

  /** Lets go of the sheet, to work on another. */
  close(): void {
    this.channel.close();
    this.release?.();
    this.release = undefined;
  }

  private async handOver(): Promise<void> {
    const release = this.release;
    this.release = undefined;
    await this.lost();
    release?.();
  }

  private request(options: LockOptions): Promise<boolean> {
    return new Promise((resolve, reject) => {
      navigator.locks
        .request(`piecewise sheet ${this.id}`, options, (lock) => {
          if (!lock) {
            resolve(false);
            return undefined;
          }
          return new Promise<void>((release) => {
            this.release = release;
            resolve(true);
          });
        })
        .catch((thrown: unknown) => {
          // Before the lock was had, the wait was given up; afterwards, another tab has taken it by force.
          if (this.release) void this.handOver();
          reject(thrown instanceof Error ? thrown : new Error(String(thrown)));
        });
    });
  }
}
