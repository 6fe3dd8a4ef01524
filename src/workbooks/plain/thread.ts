/** Thread, and the seams that take it. */
import { plain } from "./formula";
import { twin, type Twins } from "./template";

export const thread: Twins = {
  THREADLENGTH: twin("seamLength ratio units", "amount", (read) => {
    const ratio = read.plainNumber("ratio", { least: 1, most: 25 }, 2.5);
    return plain`${read.longLength("seamLength")}*${ratio}`;
  }),

  /** In every row a seam between neighbors, as long as a patch is before sewing; between the rows one as long as a row. */
  SEAMLENGTH: twin("across down patch units seam", "amount", (read) => {
    const [across, down] = [read.countOrEmpty("across"), read.countOrEmpty("down")];
    const [patch, seam] = [read.length("patch"), read.lengthOrZero("seam", "seam")];
    const inRows = plain`${down}*(${across}-1)*(${patch}+2*${seam})`;
    const between = plain`(${down}-1)*(${across}*${patch}+2*${seam})`;
    return plain`IF(${across}*${down}=0,0,${inRows}+${between})`;
  }),
};
