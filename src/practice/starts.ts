/** What a new sheet can start from. */
import type { Start } from "./list";
import { emptySheet, type OpenedSheet, starterSheet } from "./opened";

/** @param open opens a sheet that was made */
export async function startsFor(open: (sheet: OpenedSheet) => void): Promise<Start[]> {
  const { plannedWorkbooks } = await import(/* webpackChunkName: "workbooks" */ "./planned");
  const starts: { title: string; about: string; sheet: () => OpenedSheet }[] = [
    {
      title: "Throw quilt plan",
      about: "Half-square units and a border of keys: change a yellow cell and see what follows.",
      sheet: starterSheet,
    },
    ...plannedWorkbooks,
    { title: "Empty sheet", about: "For formulas of your own.", sheet: emptySheet },
  ];
  return starts.map(({ title, about, sheet }) => ({
    title,
    about,
    open: () => {
      open(sheet());
    },
  }));
}
