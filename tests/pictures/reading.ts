/** Reads pictures back: what is drawn, where, and with which words. */
import { descendants, type Element, readXml } from "../contract/xml";
import type { Point } from "../laws/outline";

export interface ReadPicture {
  title: string;
  description: string;
  /** Words that are drawn, in their order. */
  words: string[];
  /** Corners of every shape of a class, pixels. */
  shapes(part: string): Point[][];
}

/** How exact a pixel is written. */
export const PIXEL = 0.011;

/**
 * Reads a picture, and expects what every picture must be: well-formed, named for those who cannot see it, without a number
 * that is none, and with everything inside its view box.
 */
export function readPicture(svg: string): ReadPicture {
  expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
  expect(svg.replace(/&(?:amp|lt|gt|quot);/g, "")).not.toContain("&");
  const root = readXml(svg.trim());
  expect(root.name).toBe("svg");
  expect(root.attributes).toMatchObject({ xmlns: "http://www.w3.org/2000/svg", role: "img" });
  const [title, description] = ["title", "desc"].map((name) => textOf(root, name));
  expect(title).not.toBe("");
  expect(description.length).toBeGreaterThan(title.length);
  expectInside(root);
  expectHatchesDefined(svg, root);
  return {
    title,
    description,
    words: descendants(root, "text").map(({ text }) => plain(text)),
    shapes: (part) =>
      descendants(root, "polygon")
        .filter(({ attributes }) => attributes.class === part)
        .map(cornersOf),
  };
}

function textOf(root: Element, name: string): string {
  const found = root.children.filter((child) => child.name === name);
  expect(found).toHaveLength(1);
  return plain(found[0].text);
}

function plain(text: string): string {
  return text
    .replace(/&lt;/g, "<")
    .replace(/&gt;/g, ">")
    .replace(/&quot;/g, '"')
    .replace(/&amp;/g, "&");
}

function cornersOf({ attributes }: Element): Point[] {
  return attributes.points.split(" ").map((corner) => {
    const [x, y] = corner.split(",").map(Number);
    return { x, y };
  });
}

/** Every corner, line and start of a text lies in the view box. */
function expectInside(root: Element): void {
  const [left, top, width, height] = root.attributes.viewBox.split(" ").map(Number);
  const drawn = root.children.filter(({ name }) => name !== "defs");
  const points = drawn.flatMap((element): Point[] => {
    const { name, attributes } = element;
    if (name === "polygon") return cornersOf(element);
    if (name === "path") {
      return [...attributes.d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({ x: +x, y: +y }));
    }
    return name === "text" ? [{ x: +attributes.x, y: +attributes.y }] : [];
  });
  const drawnBox = boxOf(points);
  expect(drawnBox.left).toBeGreaterThanOrEqual(left);
  expect(drawnBox.top).toBeGreaterThanOrEqual(top);
  expect(drawnBox.left + drawnBox.width).toBeLessThanOrEqual(left + width);
  expect(drawnBox.top + drawnBox.height).toBeLessThanOrEqual(top + height);
}

function expectHatchesDefined(svg: string, root: Element): void {
  const defined = descendants(root, "pattern").map(({ attributes }) => attributes.id);
  const used = [...svg.matchAll(/url\(#(\w+)\)/g)].map(([, id]) => id);
  expect([...new Set(used)].sort()).toEqual([...defined].sort());
}

/** How wide a letter is drawn on the average, and how high, in parts of the size of the type. */
const LETTER = { wide: 0.52, high: 0.72 };

/** Pairs of texts that lie on one another. */
export function overlappingTexts(svg: string): string[] {
  const root = readXml(svg.trim());
  const texts = descendants(root, "text").map(({ text, attributes }) => {
    const size = Number({ ...root.attributes, ...attributes }["font-size"]);
    const [x, y, width] = [Number(attributes.x), Number(attributes.y), plain(text).length * size * LETTER.wide];
    const anchor = attributes["text-anchor"];
    const left = anchor === "middle" ? -width / 2 : anchor === "end" ? -width : 0;
    const turned = /^rotate\((\S+) /.exec(attributes.transform);
    const turn = (Number(turned?.[1] ?? 0) * Math.PI) / 180;
    const half = (size * LETTER.high) / 2;
    const corners = [
      [left, -half],
      [left + width, -half],
      [left + width, half],
      [left, half],
    ].map(([across, down]) => ({
      x: x + across * Math.cos(turn) - down * Math.sin(turn),
      y: y + across * Math.sin(turn) + down * Math.cos(turn),
    }));
    return { words: plain(text), corners };
  });
  return texts.flatMap(({ words, corners }, index) =>
    texts
      .slice(index + 1)
      .filter((other) => !areApart(corners, other.corners) && !areApart(other.corners, corners))
      .map((other) => `${words} | ${other.words}`),
  );
}

/** Whether all of another shape lies beyond one side of a shape that runs clockwise. */
function areApart(corners: readonly Point[], others: readonly Point[]): boolean {
  return corners.some((from, index) => {
    const to = corners[(index + 1) % corners.length];
    return others.every(({ x, y }) => (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x) <= 0);
  });
}

/** Area of a shape, square pixels. */
export function areaOf(corners: readonly Point[]): number {
  const twice = corners.reduce((sum, { x, y }, index) => {
    const next = corners[(index + 1) % corners.length];
    return sum + x * next.y - next.x * y;
  }, 0);
  return Math.abs(twice) / 2;
}

export interface Box {
  left: number;
  top: number;
  width: number;
  height: number;
}

export function boxOf(corners: readonly Point[]): Box {
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}

/** Expects two numbers of pixels to be the same but for what is rounded when they are written. */
export function expectPixels(got: number, expected: number, exact = 2 * PIXEL): void {
  expect(Math.abs(got - expected)).toBeLessThanOrEqual(exact);
}
