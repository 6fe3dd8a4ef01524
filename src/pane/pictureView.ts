/** The picture of an answer: to be saved, to be put into the sheet, and where it is one of blocks, to be turned. */
import { attempt, type Tell } from "./answerView";
import type { CallPicture } from "./callPicture";
import { button, element, folded } from "./element";
import { bytesOf, drawn, fileName, pictureAddress, saveFile } from "./save";
import type { Picture, Sheet } from "./sheet";
import type { Spot } from "./spots";

export interface PictureSurroundings {
  sheet: Sheet;
  tell: Tell;
  /** Called after a cell was written. */
  changed: () => void;
}

export function pictureView({ picture, turns, remarks }: CallPicture, around: PictureSurroundings): HTMLElement {
  const { sheet, tell } = around;
  const name = fileName(picture.title);
  const insert = async () => {
    await sheet.insertPicture(await drawn(picture));
    tell("The picture stands beside the selected cell.");
  };
  const savePng = async () => {
    saveFile(bytesOf((await drawn(picture)).png), "image/png", `${name}.png`);
  };
  const cannot = sheet.whyNot("picture");
  const image = element("img", { className: "picture", src: pictureAddress(picture), alt: picture.description });
  const held = element("div", { className: "turnable" }, image, turns && spotsView(turns, around));
  held.style.width = widthOf(picture);
  return folded(
    "Picture",
    true,
    element(
      "div",
      { className: "wide", tabIndex: 0, attributes: { role: "region", "aria-label": picture.title } },
      held,
    ),
    ...remarks.map((remark) => element("p", { className: "quiet" }, remark)),
    element(
      "p",
      { className: "buttons" },
      cannot === undefined && button("Put into the sheet", () => void attempt(insert, tell)),
      button("Save SVG", () => {
        saveFile(picture.svg, "image/svg+xml", `${name}.svg`);
      }),
      button("Save PNG", () => void attempt(savePng, tell)),
    ),
    cannot === undefined ? undefined : element("p", { className: "quiet" }, cannot),
  );
}

/** Below this part of its size a picture's words cannot be read: then it scrolls. */
const LEAST_SCALE = 0.7;

function widthOf({ svg }: Picture): string {
  const width = Number(/ width="(\d+)"/.exec(svg)?.[1] ?? 0);
  return `max(min(100%, ${width}px), ${LEAST_SCALE * width}px)`;
}

/** A button over each part that can be turned. One of them takes part in the order of Tab; arrow keys lead to the others. */
function spotsView({ spots, argument, turning }: NonNullable<CallPicture["turns"]>, around: PictureSurroundings) {
  const turn = async (spot: Spot) => {
    around.tell(await turning.turn(spot));
    around.changed();
  };
  const buttons = spots.map((spot, index) => {
    const made = button("", () => void attempt(() => turn(spot), around.tell), "spot");
    made.setAttribute("aria-label", spot.words);
    made.dataset.place = `${argument} ${spot.row} ${spot.column}`;
    made.tabIndex = index === 0 ? 0 : -1;
    for (const [side, part] of Object.entries(spot.box)) made.style.setProperty(side, `${100 * Number(part)}%`);
    return made;
  });
  const label = argument === "layout" ? "Blocks of the layout" : "Patches of the block";
  const group = element("div", { attributes: { role: "group", "aria-label": label } }, ...buttons);
  group.addEventListener("focusin", ({ target }) => {
    for (const one of buttons) one.tabIndex = one === target ? 0 : -1;
  });
  group.addEventListener("keydown", (event) => {
    const from = buttons.indexOf(event.target as HTMLButtonElement);
    const to = neighbor(spots, from, event.key);
    if (to === undefined) return;
    event.preventDefault();
    buttons[to].focus();
  });
  return group;
}

const STEPS: Partial<Record<string, readonly [across: number, down: number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The nearest part in the direction of an arrow key, rather straight on than aside. */
export function neighbor(spots: readonly Pick<Spot, "box">[], from: number, key: string): number | undefined {
  const step = STEPS[key];
  if (!step) return undefined;
  const middle = ({ box }: Pick<Spot, "box">) => ({ x: box.left + box.width / 2, y: box.top + box.height / 2 });
  const start = middle(spots[from]);
  let best: { index: number; far: number } | undefined;
  spots.forEach((spot, index) => {
    const { x, y } = middle(spot);
    const ahead = (x - start.x) * step[0] + (y - start.y) * step[1];
    const aside = Math.abs((x - start.x) * step[1]) + Math.abs((y - start.y) * step[0]);
    const far = ahead + 3 * aside;
    if (ahead > 1e-6 && (best === undefined || far < best.far)) best = { index, far };
  });
  return best?.index;
}
