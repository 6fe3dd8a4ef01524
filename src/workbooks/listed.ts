/** Fabrics of a cutting list that nobody would buy, since they are not among those to buy. */
import type { Entry } from "./book";
import { countOf } from "./shared";

/** Where a cutting list stands: its sheet with "!", or none where it is the same; the rows below its heading, a free one included. */
export interface CuttingList {
  sheet: string;
  first: number;
  last: number;
  /** Right of what is printed. */
  sentences: string;
  /** The letters of the fabrics that are bought. */
  listed: string;
}

/** The fabrics of a cutting list. */
export function fabricsIn({ sheet, first, last }: CuttingList): string {
  return `${sheet}$A$${first}:$A$${last}`;
}

/** Beside a cutting list: a sentence where a fabric begins that is not listed to be bought. */
export function listedColumn({ first, last, sentences, listed }: CuttingList): Entry[] {
  return Array.from({ length: last - first + 1 }, (_, index): Entry => {
    const fabric = `A${first + index}`;
    // The first one stands below the heading, which is an error where there is no list.
    const begins = index === 0 ? "" : `,${fabric}=A${first + index - 1}`;
    const content = `=IF(OR(${fabric}=""${begins}),"",${unlessListed(fabric, "is used", listed)})`;
    return { cell: `${sentences}${first + index}`, style: "caution", content };
  });
}

/** A sentence for a fabric that is not listed to be bought. */
export function unlessListed(fabric: string, does: string, listed: string): string {
  return `IF(${countOf(listed, fabric)}>0,"","Fabric "&${fabric}&" ${does} and is not listed. ")`;
}

/** The sentences of all fabrics that are not listed, also where rows were inserted that have none. */
export function unlisted(list: CuttingList): string {
  const { sheet, first, last, sentences, listed } = list;
  const all = Array.from({ length: last - first + 1 }, (_, index) => `${sheet}${sentences}${first + index}`).join("&");
  const used = fabricsIn(list);
  const some = `SUMPRODUCT((${used}<>"")*ISNA(MATCH(TRIM(${used}),TRIM(${listed}),0)))>0`;
  return `IF(${all}<>"",${all},IF(${some},"A fabric is used and is not listed. ",""))`;
}
