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
  webster: {
    author: "Marie D. Webster",
    title: "Quilts: Their Story and How to Make Them",
    year: "1915",
    where: "Doubleday, chapter V; Project Gutenberg 24682",
  },
  mcGlauflin: {
    author: "Idabelle McGlauflin",
    title: "Handicraft for Girls",
    year: "1910",
    where: "round holder; Project Gutenberg 34854",
  },
  stripCount: { author: "Published tutorial", title: "Binding strips of 2 in for a quilt of 78 × 56 in: 7 strips" },
  lewisBias: { author: "M. Lewis", title: "Bias strip from a square: 36 in square, strips of 2 in, 648 in" },
  biasSquares: { author: "Published tables", title: "Squares for continuous bias binding" },
  biasAlongSelvage: {
    author: "Published dressmaking table",
    title: "Length along the selvage that a bias strip takes",
  },
  louisianaVoices: {
    author: "Louisiana Folklife Program",
    title: "Louisiana Voices, Unit VII: Pricing Your Craft",
    where: "wholesale is materials, labor and overhead; retail is twice wholesale",
  },
  lockstitchRatio: {
    author: "Thread makers' guides",
    title: "Thread for stitch type 301 of ISO 4915: 2.5 for each length of seam",
  },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;

/** Labels that claim no published source. All but "derived" come from outside the project. */
export const UNPUBLISHED = ["derived", "common practice", "from memory"] as const;
