/** The bibliography of the check values. Excerpts were read in stored copies; figures are quoted, never sentences. */
export interface Source {
  author: string;
  title: string;
  year?: string;
  /** Where in it, or how it was read. */
  where?: string;
}

export const SOURCES = {
  nist: { author: "NIST", title: "Handbook 44, Appendix C: general tables of units of measurement", where: "length" },
  cpscCribs: {
    author: "US Consumer Product Safety Commission",
    title: "Crib Mattresses: frequently asked questions",
    where: "the same lengths printed in inches and millimeters",
  },
  dryGoods: {
    author: "G. S. Cole",
    title: "A Complete Dictionary of Dry Goods",
    where: "Measures (author from memory)",
  },
  northHampshire: { author: "North Hampshire Quilters", title: "Guild handout on cutting sizes" },
  yieldHandout: { author: "Quilting class handout", title: "Squares from a fat quarter of 18 × 22 in" },
  quiltAuthorFaq: { author: "A quilt author's published answers", title: "How much fabric for 80 squares of 2½ in" },
  finnishTeacher: {
    author: "A Finnish patchwork teacher",
    title: "Rule for seam allowances of triangles: about 3.5 and 5 seams",
  },
  fourAtOnce: { author: "Published tutorial", title: "Half-square triangles four at a time from 10 in squares" },
  textbookBacking: { author: "A textbook of household sewing", title: "Backing of a quilt 102 × 120 from 44 in cloth" },
  mathForum: {
    author: "Math Forum at Drexel",
    title: "Geometry Problem of the Week: Quilting, the Mariner's Compass",
    year: "March 1996",
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;

/** Labels that claim no published source. All but "derived" come from outside the project. */
export const UNPUBLISHED = ["derived", "common practice", "from memory"] as const;
