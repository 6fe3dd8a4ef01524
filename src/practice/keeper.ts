/** Keeps the open sheet in the browser, shortly after each change. */
import type { IWorkbookData } from "@univerjs/core";
import { FORMAT, type Refusal, type Store, StoreProblem } from "./store";

/** How long changes gather before the sheet is kept, in milliseconds: the most that a crash can take. */
const PAUSE = 300;

export class Keeper {
  private timer: ReturnType<typeof setTimeout> | undefined;
  private running = Promise.resolve(true);
  private last = "";

  /**
   * @param store undefined where the browser keeps nothing
   * @param read the sheet as it stands
   * @param kept whether it is kept already, as it stands
   * @param told called after each try: undefined where all is kept that was to be kept then
   */
  constructor(
    private readonly store: Store | undefined,
    private readonly id: string,
    private readonly read: () => { name: string; workbook: IWorkbookData },
    kept: boolean,
    private readonly told: (refusal: Refusal | undefined) => void,
  ) {
    if (kept) this.last = this.fingerprint();
  }

  /** Something may have changed. */
  changed(): void {
    this.timer ??= setTimeout(() => void this.keepNow(), PAUSE);
  }

  /** Keeps what has changed and has not been kept yet, if anything; tells whether the browser took it. */
  keepNow(): Promise<boolean> {
    clearTimeout(this.timer);
    this.timer = undefined;
    this.running = this.running.then(() => this.keep());
    return this.running;
  }

  /** Whether a change waits to be kept. */
  get waiting(): boolean {
    return this.timer !== undefined;
  }

  /** Whether there are changes that are not kept. */
  get behind(): boolean {
    return this.fingerprint() !== this.last;
  }

  /** Stops for good, after the last change. */
  async stop(): Promise<void> {
    await this.keepNow();
    this.keep = () => Promise.resolve(true);
  }

  private keep = async (): Promise<boolean> => {
    try {
      const fingerprint = this.fingerprint();
      if (fingerprint !== this.last) {
        if (!this.store) throw new StoreProblem("unavailable");
        await this.store.keep({ id: this.id, changed: Date.now(), format: FORMAT, ...this.read() });
        this.last = fingerprint;
      }
      this.told(undefined);
      return true;
    } catch (thrown) {
      this.told(thrown instanceof StoreProblem ? thrown.refusal : "unavailable");
      return false;
    }
  };

  private fingerprint(): string {
    return JSON.stringify(this.read());
  }
}
