/** Settings: quilt tops laid out from blocks, and quilts for beds. */
import { type Formula, plain, plus, times } from "./formula";
import type { Reader } from "./reader";
import { twin, type Twins } from "./template";

export const settings: Twins = {
  TOPSIZE: twin("across down block sashing edge setting units", "size", (read) => {
    const counts = [read.count("across", undefined, 1), read.count("down", undefined, 1)];
    return [counts.map((count) => topSide(read, count))];
  }),
};

/** One way across the top: blocks, and the sashes between them, one fewer, or one more where it is sashed all round. */
function topSide(read: Reader, count: Formula): Formula {
  const [block, sashing] = [read.length("block"), read.lengthOrZero("sashing", 0)];
  const withSashes = (more: string) => plus(times(count, block), times(plain`(${count}${more})`, sashing));
  const straight = () =>
    read.choose("edge", "none", { none: () => withSashes("-1"), sashed: () => withSashes("+1") });
  return read.choose("setting", "straight", {
    straight,
    "on point": () => times("SQRT(2)", plain`(${straight()})`),
    "two-side": () => times(count, plain`(${plus(block, sashing)})`),
  });
}
