/**
 * The place of the pane on the page: beside the grid, below it in a narrow window, in its place in a small one. It is opened,
 * closed and resized here, and filled when it is opened for the first time.
 */
import { part } from "./parts";

/** Where the place remembers whether it is open, and its sizes. */
const REMEMBERED = "piecewise pane";

/** Windows from here on have room for grid and pane side by side, in rem. */
const ROOMY = "(min-width: 60rem)";

/** How far an arrow key moves the edge, in pixels. */
const STEP = 24;

interface Remembered {
  open?: boolean;
  /** Beside the grid, in pixels. */
  width?: number;
  /** Below the grid, in pixels. */
  height?: number;
}

export class Panel {
  private readonly place = part("beside");
  private readonly edge = part("edge");
  private readonly button = part("show-pane", HTMLButtonElement);
  private readonly remembered = recall();
  private filled = false;

  /**
   * @param fill fills the pane
   * @param leave puts the keyboard back on the grid
   * @param told called when it opens or closes
   */
  constructor(
    private readonly fill: (place: HTMLElement) => Promise<void>,
    private readonly leave: () => void,
    private readonly told: (open: boolean) => void,
  ) {
    this.button.onclick = () => {
      this.show(!this.isOpen);
    };
    this.edge.onkeydown = (event) => {
      this.moveByKey(event);
    };
    this.edge.onpointerdown = (event) => {
      this.drag(event);
    };
    new ResizeObserver(() => {
      this.describeEdge();
    }).observe(this.place);
    for (const side of ["width", "height"] as const) this.setSize(side, this.remembered[side]);
  }

  get isOpen(): boolean {
    return !this.place.hidden;
  }

  /** Whether the pane stands in the place of the grid. */
  get coversGrid(): boolean {
    return this.isOpen && getComputedStyle(this.place).position === "absolute";
  }

  /** Opens the pane if it was open last, or if there is room and nothing is remembered. */
  openIfWanted(): void {
    if (this.remembered.open ?? matchMedia(ROOMY).matches) this.set(true);
  }

  /** Opens or closes the pane at the maker's wish; the keyboard goes along. */
  show(open: boolean): void {
    this.set(open);
    this.remember({ open });
    if (open) this.focus();
    else this.leave();
  }

  focus(): void {
    this.place.querySelector<HTMLElement>("[role=tab][aria-selected=true]")?.focus();
  }

  private set(open: boolean): void {
    this.place.hidden = !open;
    this.button.setAttribute("aria-expanded", String(open));
    this.told(open);
    if (!open || this.filled) return;
    this.filled = true;
    const pane = part("pane");
    this.fill(pane).catch((thrown: unknown) => {
      console.warn(thrown);
      this.filled = false;
      pane.textContent = "This could not be loaded. Close it and open it again.";
    });
  }

  /** Whether the edge moves to the left and right, or up and down. */
  private get side(): "width" | "height" {
    return getComputedStyle(this.place.parentElement!).flexDirection === "column" ? "height" : "width";
  }

  private get size(): number {
    return this.place.getBoundingClientRect()[this.side];
  }

  private moveByKey(event: KeyboardEvent): void {
    const larger = this.side === "width" ? "ArrowLeft" : "ArrowUp";
    const smaller = this.side === "width" ? "ArrowRight" : "ArrowDown";
    if (event.key !== larger && event.key !== smaller) return;
    event.preventDefault();
    this.resize(this.size + (event.key === larger ? STEP : -STEP));
  }

  private drag(event: PointerEvent): void {
    const { side, size } = this;
    const at = (moved: PointerEvent) => (side === "width" ? moved.clientX : moved.clientY);
    const start = at(event);
    this.edge.setPointerCapture(event.pointerId);
    this.edge.onpointermove = (moved) => {
      this.resize(size + start - at(moved));
    };
    this.edge.onlostpointercapture = () => {
      this.edge.onpointermove = null;
    };
  }

  /** The limits stand in the style sheet; what came of the wish is remembered. */
  private resize(size: number): void {
    const { side } = this;
    this.setSize(side, size);
    this.remember({ [side]: this.size });
    this.setSize(side, this.size);
  }

  private setSize(side: "width" | "height", size: number | undefined): void {
    if (size !== undefined) this.place.style.setProperty(`--${side}`, `${size}px`);
  }

  /** Tells a screen reader where the edge is. */
  private describeEdge(): void {
    if (!this.isOpen) return;
    const all = this.place.parentElement!.getBoundingClientRect()[this.side];
    const share = String(Math.round((this.size / Math.max(all, 1)) * 100));
    this.edge.setAttribute("aria-valuenow", share);
    this.edge.setAttribute("aria-orientation", this.side === "width" ? "vertical" : "horizontal");
  }

  private remember(change: Remembered): void {
    Object.assign(this.remembered, change);
    try {
      localStorage.setItem(REMEMBERED, JSON.stringify(this.remembered));
    } catch {
      // Then the next visit starts anew.
    }
  }
}

function recall(): Remembered {
  try {
    const { open, width, height } = JSON.parse(localStorage.getItem(REMEMBERED) ?? "{}") as Record<string, unknown>;
    const size = (value: unknown) => (typeof value === "number" && value > 0 ? value : undefined);
    return { open: typeof open === "boolean" ? open : undefined, width: size(width), height: size(height) };
  } catch {
    return {};
  }
}
