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
  geeseTables: {
    author: "Three quilting teachers",
    title: "Tables of cut sizes for flying geese, four at once",
    where: "published independently; all three agree",
  },
  guildOnPoint: { author: "A quilting guild", title: "Worked example: a 6 in block set on point" },
  starQuilt: {
    author: "National Museum of American History, Smithsonian Institution",
    title: "Quilt of star blocks",
    where: "object nmah_556181: blocks of 14 in, 32 diamonds each",
  },
  diamondStarQuilt: {
    author: "National Museum of American History, Smithsonian Institution",
    title: "Quilt with one large star",
    where: "object nmah_556331: a star of 648 diamonds",
  },
  schoolGeometry: {
    author: "School geometry",
    title: "Radius of an inscribed circle",
    where: "right triangle (a + b − c) / 2; any triangle 2 × area / perimeter; hexagon side × √3 / 2",
  },
  aatcc: {
    author: "American Association of Textile Chemists and Colorists",
    title: "TM 135, Dimensional Changes of Fabrics after Home Laundering",
    where: "as described in encyclopedias: (before − after) / before",
  },
  algebraSum: { author: "An algebra textbook", title: "Sum of six lengths of fabric in yards" },
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
  gifford: { author: "J. B. Gifford", title: "Everyday Arithmetic", year: "1914", where: "questions 46 to 56" },
  possiblePatches: {
    author: "Interactive Mathematics Program",
    title: "Possible Patches",
    where: "patches of 3 × 5 from 17 × 22",
  },
  quiltQuest: {
    author: "Nebraska Extension, 4-H",
    title: "Quilt Quest",
    where: "pre-cut bundles: up to 40 strips of 2½ in",
  },
  smithsonianNinePatch: {
    author: "National Museum of American History, Smithsonian Institution",
    title: "Quilt of 696 small blocks",
    where: "object nmah_556266: blocks of 3 in, 72 × 88 in",
  },
  smithsonianOnPoint: {
    author: "National Museum of American History, Smithsonian Institution",
    title: "Quilt of blocks on point with two borders",
    where: "object nmah_1694195: 5 × 6 blocks of 8 in, borders of 8 and 3 in, 79 × 89 in",
  },
  masonicQuilt: {
    author: "Scottish Rite Masonic Museum & Library",
    title: "Quilt of sashed blocks",
    where: "object 97.011: 10 × 10 blocks of 7 in, sashing and border of 1¾ in, 89¾ × 88 in",
  },
  magazineMiter: { author: "A quilting magazine", title: "Worked example: length of a mitered border strip" },
  classBorder: { author: "A quilting class lesson", title: "A 6 in border for a top of 70 × 86 in" },
  cribRule: {
    author: "US Consumer Product Safety Commission",
    title: "16 CFR 1219, Safety Standard for Full-Size Baby Cribs",
    where: "interior of a full-size crib (ASTM F1169)",
  },
  betterSleep: {
    author: "Better Sleep Council, International Sleep Products Association",
    title: "Mattress sizes",
  },
  bedCoverings: { author: "Sewing & Craft Alliance", title: "Guideline 7.115, Bed Coverings" },
  classTargets: { author: "A quilting class handout", title: "Sizes of quilts for beds, hanging down 12 in" },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;

/** Labels that claim no published source. All but "derived" come from outside the project. */
export const UNPUBLISHED = ["derived", "common practice", "from memory"] as const;
