/** Shapes other than squares: each side moves outward by the seam. */
import { type Formula, plain } from "./formula";
import type { Reader } from "./reader";
import { toMark } from "./patches";
import { twin, type Twins } from "./template";

export const shapes: Twins = {
  CUTHALFRECTANGLE: twin("width height seam mark units", "size", (read) => {
    const [width, height] = [read.length("width"), read.length("height")];
    const growth = grown(read, plain`(${width}+${height}-SQRT(${width}^2+${height}^2))/2`);
    return [[width, height].map((side) => toMark(read, 0, plain`${side}*${growth}`))];
  }),

  CUTTRIANGLE: twin("base height seam mark units", "size", (read) => {
    const base = read.length("base");
    const height = read.lengthOr("height", plain`${base}*SQRT(3)/2`);
    const growth = grown(read, plain`${base}*${height}/(${base}+SQRT(${base}^2+4*${height}^2))`);
    return [[base, height].map((side) => toMark(read, 0, plain`${side}*${growth}`))];
  }),

  CUTDIAMOND: twin("side angle seam mark units", "size", (read) => {
    const side = read.length("side");
    const sine = plain`SIN(${read.plainNumber("angle", { least: 1, most: 179 }, 45)}*PI()/180)`;
    const seam = read.lengthOrZero("seam", "seam");
    return [[plain`${side}*${sine}+2*${seam}`, plain`${side}+2*${seam}/${sine}`].map((cut) => toMark(read, 0, cut))];
  }),

  CUTHEXAGON: twin("side seam mark units", "size", (read) => {
    const [side, seam] = [read.length("side"), read.lengthOrZero("seam", "seam")];
    return [[plain`${side}*SQRT(3)+2*${seam}`, plain`${side}+2*${seam}/SQRT(3)`].map((cut) => toMark(read, 0, cut))];
  }),
};

/** How a shape with an inscribed circle of this radius grows when each side moves outward by the seam. */
function grown(read: Reader, radius: Formula): Formula {
  return plain`1+${read.lengthOrZero("seam", "seam")}/${radius}`;
}
