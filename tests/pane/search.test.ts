/** Questions as makers ask them, and the function that must come first, or among the first three. */
import { worksheetFunctions } from "../../functions";
import { catalogue } from "../../scripts/catalogue";
import { Finder } from "../../src/pane/search";
import { ASKED } from "../../src/pane/synonyms";

const families = catalogue();
const finder = new Finder(families);
const names = (question: string, most: number) =>
  finder
    .find(question)
    .slice(0, most)
    .map(({ id }) => id);

const FIRST: [question: string, id: string][] = [
  ["how many strips", "STRIPSNEEDED"],
  ["how many strips do I need to cut", "STRIPSNEEDED"],
  ["setting triangles", "CUTSIDETRIANGLE"],
  ["side setting triangles", "CUTSIDETRIANGLE"],
  ["corner triangles", "CUTCORNERTRIANGLE"],
  ["backing", "BACKINGFABRIC"],
  ["how much backing", "BACKINGFABRIC"],
  ["fabric for the back of my quilt", "BACKINGFABRIC"],
  ["which way do the backing seams run", "BACKINGPLAN"],
  ["wadding", "BATTINGSIZE"],
  ["batting", "BATTINGSIZE"],
  ["what size wadding", "BATTINGSIZE"],
  ["packaged batting", "BATTINGPACK"],
  ["HST", "CUTHALFSQUARE"],
  ["HSTs eight at a time", "CUTHALFSQUARE"],
  ["half-square triangles", "CUTHALFSQUARE"],
  ["half square triangle size", "CUTHALFSQUARE"],
  ["QST", "CUTQUARTERSQUARE"],
  ["hourglass", "CUTQUARTERSQUARE"],
  ["flying geese", "CUTGEESE"],
  ["flying goose unit", "CUTGEESE"],
  ["square in a square", "CUTSQUAREINSQUARE"],
  ["snowball", "CUTCORNER"],
  ["stitch and flip corners", "CUTCORNER"],
  ["hexies", "CUTHEXAGON"],
  ["diamonds", "CUTDIAMOND"],
  ["template", "CUTTEMPLATE"],
  ["eight point star", "CUTSTAR"],
  ["binding", "BINDINGFABRIC"],
  ["how many binding strips", "BINDINGSTRIPS"],
  ["length of binding", "BINDINGLENGTH"],
  ["bias binding", "BIASSQUARE"],
  ["how much bias from a square", "BIASLENGTH"],
  ["pieced border", "BORDERFIT"],
  ["piano keys", "BORDERFIT"],
  ["wavy borders", "BORDERMEASURED"],
  ["fabric for borders", "BORDERFABRIC"],
  ["how many strips for the border", "BORDERSTRIPS"],
  ["mitred border", "BORDERLENGTHS"],
  ["quilt size with borders", "BORDERSIZE"],
  ["shrinkage", "BEFOREWASHING"],
  ["decimal to fraction", "LENGTHTEXT"],
  ["round to the ruler", "LENGTHMARK"],
  ["inches to yards", "FABRIC"],
  ["cutting plan", "PLAN"],
  ["do I have enough fabric", "PLANSPARE"],
  ["how many fat quarters", "PANELSNEEDED"],
  ["shopping list", "QUILTFABRICS"],
  ["how many blocks", "BLOCKSFOR"],
  ["queen size quilt", "BEDSIZE"],
  ["mattress", "BEDSIZE"],
  ["how big will my quilt be", "TOPSIZE"],
  ["sashing and cornerstones", "TOPPIECES"],
  ["how many strip sets", "STRIPSETS"],
  ["how many squares per strip", "STRIPPATCHES"],
  ["how many strips from a yard", "STRIPSFROM"],
  ["thread", "THREADLENGTH"],
  ["what does the kit cost", "KITCOST"],
  ["margin", "PRICEFORMARGIN"],
  ["markup", "PRICEFORMARKUP"],
  ["kits from a bolt", "KITSPERBOLT"],
  ["how many bolts", "BOLTSNEEDED"],
  ["CUTSQUARE", "CUTSQUARE"],
  ["=QUILT.PLANSTRIPS", "PLANSTRIPS"],
  ["same quilt in several sizes", "SIZETABLE"],
];

const AMONG_THREE: [question: string, id: string][] = [
  ["how much fabric for 80 squares", "PATCHFABRIC"],
  ["yardage for strips", "STRIPFABRIC"],
  ["jelly roll", "BUNDLECHECK"],
  ["how many triangles from a strip", "STRIPTRIANGLES"],
  ["how many squares from a fat quarter", "PIECESFROM"],
  ["seam allowance for a square", "CUTSQUARE"],
  ["on point", "TOPSIZE"],
  ["equilateral triangle", "CUTTRIANGLE"],
  ["will it trim to size", "CUTCHECK"],
  ["tube", "TUBEUNITS"],
  ["odd size not on the ruler", "GRIDPATCH"],
  ["back", "BACKINGFABRIC"],
  ["bord", "BORDERFABRIC"],
  ["wide backing fabric", "BACKINGPLAN"],
  ["remnants", "BOLTPLAN"],
  ["patches across the WOF", "STRIPPATCHES"],
];

/** At least one question for every function, in words that its own page does not use. */
const IN_MAKERS_WORDS: [question: string, id: string][] = [
  ["allowing for shrinkage when prewashing", "BEFOREWASHING"],
  ["round up to the nearest quarter yard", "FABRIC"],
  ["write the meterage for my handout", "FABRICTEXT"],
  ["feet and inches to inches", "LENGTH"],
  ["nearest sixteenth on my ruler", "LENGTHMARK"],
  ["turn a decimal into eighths", "LENGTHTEXT"],
  ["what size square for a snowball block corner", "CUTCORNER"],
  ["goose units without waste", "CUTGEESE"],
  ["triangle squares eight from one pair", "CUTHALFSQUARE"],
  ["cut a square on both diagonals", "CUTQUARTERSQUARE"],
  ["seam allowance on both sides of a patch", "CUTSQUARE"],
  ["square on point inside a square with triangles around it", "CUTSQUAREINSQUARE"],
  ["block size that divides evenly by 7", "GRIDPATCH"],
  ["baby blocks tumbling diamond strip width", "CUTDIAMOND"],
  ["long skinny triangles from a rectangle 2 by 4", "CUTHALFRECTANGLE"],
  ["honeycomb patches how wide a strip", "CUTHEXAGON"],
  ["8 pointed star diamonds and corner squares", "CUTSTAR"],
  ["making templates for odd shaped pieces", "CUTTEMPLATE"],
  ["pyramid quilt triangles sixty degree", "CUTTRIANGLE"],
  ["enough to trim off the HST", "CUTCHECK"],
  ["what does a 2.5 inch square finish to", "FINISHEDSIZE"],
  ["unfinished size of geese before squaring up", "UNITMADE"],
  ["meters to buy for 8 strips", "STRIPFABRIC"],
  ["squares out of one WOF strip", "STRIPPATCHES"],
  ["width after sewing strips together", "STRIPSETSIZE"],
  ["how many strata for 40 segments", "STRIPSETS"],
  ["triangles cut head to tail per width of fabric", "STRIPTRIANGLES"],
  ["number of 2 inch strips in a fat quarter", "STRIPSFROM"],
  ["how many WOF strips to cut for 60 patches", "STRIPSNEEDED"],
  ["are there enough precut strips", "BUNDLECHECK"],
  ["tube for different sizes of half square triangles", "TUBELENGTH"],
  ["half squares from two strips sewn along both edges", "TUBEUNITS"],
  ["how much material for 48 rectangles", "PATCHFABRIC"],
  ["how many patches out of my scrap", "PIECESFROM"],
  ["best way to cut all the pieces with least waste", "PLAN"],
  ["how much do I buy for all these cuts", "PLANFABRIC"],
  ["how long a piece of cloth does the plan use", "PLANLENGTH"],
  ["how much will be left over after cutting", "PLANSPARE"],
  ["number of strips for the cutting plan", "PLANSTRIPS"],
  ["which pieces come out of the roll of strips", "STRIPSFIRST"],
  ["cutting several lengths off bolts with least left", "BOLTPLAN"],
  ["how many FQs do I buy", "PANELSNEEDED"],
  ["does my drafted block fall on the ruler lines", "BLOCKCHECK"],
  ["yardage of one color from my block chart", "BLOCKFABRIC"],
  ["cutting instructions from a block picture", "BLOCKPIECES"],
  ["supply list for my class", "QUILTFABRICS"],
  ["all the pieces of the quilt layout", "QUILTPIECES"],
  ["enlarge the quilt to king", "SIZETABLE"],
  ["how far should it hang over the sides of the mattress", "BEDSIZE"],
  ["block layout for 60 x 80", "BLOCKSFOR"],
  ["triangles for the corners of a diagonal setting", "CUTCORNERTRIANGLE"],
  ["fill in triangles along the sides", "CUTSIDETRIANGLE"],
  ["how many setting triangles do I need", "TOPPIECES"],
  ["on point quilt dimensions", "TOPSIZE"],
  ["lengthwise borders without joins how much fabric", "BORDERFABRIC"],
  ["coping border width", "BORDERFIT"],
  ["how much too long are the piano keys", "BORDERGAP"],
  ["lengths of side and top borders", "BORDERLENGTHS"],
  ["measure through the middle of the quilt for borders", "BORDERMEASURED"],
  ["adding two borders new dimensions", "BORDERSIZE"],
  ["how many WOF strips for outer border", "BORDERSTRIPS"],
  ["number of border units per side", "BORDERUNITS"],
  ["108 wide backing yardage", "BACKINGFABRIC"],
  ["do I need to join panels for the lining", "BACKINGPANELS"],
  ["backing seam direction", "BACKINGPLAN"],
  ["prepackaged batting size queen", "BATTINGPACK"],
  ["wadding with 4 inches extra each side", "BATTINGSIZE"],
  ["bias tape out of a fat quarter square", "BIASLENGTH"],
  ["binding a curved edge what square", "BIASSQUARE"],
  ["how much fabric to bind a throw", "BINDINGFABRIC"],
  ["total inches of binding", "BINDINGLENGTH"],
  ["how many strips for double fold binding", "BINDINGSTRIPS"],
  ["how many bolts for a class", "BOLTSNEEDED"],
  ["total the price of fabrics in a kit", "KITCOST"],
  ["kits out of a 15 yard bolt", "KITSPERBOLT"],
  ["what should I sell it for at a 50% margin", "PRICEFORMARGIN"],
  ["double the wholesale cost", "PRICEFORMARKUP"],
  ["how far do I sew to join the squares", "SEAMLENGTH"],
  ["bobbin thread for piecing", "THREADLENGTH"],
  ["verify the fabric requirements of a pattern", "CHECKFABRIC"],
  ["length of a sewn row of patches", "CHECKROW"],
  ["combine amounts of each fabric", "CHECKTOTALS"],
  ["sawtooth star geese", "CUTGEESE"],
  ["minky backing seam horizontal or vertical", "BACKINGPLAN"],
  ["border won't lie flat", "BORDERMEASURED"],
  ["cut borders parallel to selvage", "BORDERFABRIC"],
  ["make the pattern bigger", "SIZETABLE"],
  ["tell my students what to buy", "QUILTFABRICS"],
  ["drunkard's path template", "CUTTEMPLATE"],
  ["grandmother's flower garden", "CUTHEXAGON"],
  ["coverlet for double bed", "BEDSIZE"],
  ["charm squares needed for a baby quilt", "PATCHFABRIC"],
  ["fussy cut", "CUTTEMPLATE"],
  ["postage stamp quilt", "CUTSQUARE"],
  ["how many 2.5 inch strips in half a yard", "STRIPSFROM"],
  ["number of blocks for a throw", "BLOCKSFOR"],
  ["convert 2.375 to a fraction", "LENGTHTEXT"],
  ["finish size plus half an inch", "CUTSQUARE"],
  ["yards needed for all pieces", "PLANFABRIC"],
  ["border ruffles", "BORDERMEASURED"],
  ["is my units big enough to square up", "CUTCHECK"],
  ["prairie points around edge", "BORDERUNITS"],
  ["tumbling blocks", "CUTDIAMOND"],
];

const SLIPS: [question: string, id: string][] = [
  ["bakcing", "BACKINGFABRIC"],
  ["waddng", "BATTINGSIZE"],
  ["jely roll", "BUNDLECHECK"],
  ["mitred bordr", "BORDERLENGTHS"],
  ["hexxagon", "CUTHEXAGON"],
  ["thraed", "THREADLENGTH"],
];

test.each(FIRST)("“%s” finds %s first", (question, id) => {
  expect(names(question, 1)).toEqual([id]);
});

test.each(AMONG_THREE)("“%s” finds %s among the first three", (question, id) => {
  expect(names(question, 3)).toContain(id);
});

test.each(IN_MAKERS_WORDS)("“%s” finds %s among the first three, too", (question, id) => {
  expect(names(question, 3)).toContain(id);
});

test("every function is asked for in makers' words", () => {
  const asked = new Set(IN_MAKERS_WORDS.map(([, id]) => id));
  expect([...worksheetFunctions.keys()].filter((id) => !asked.has(id))).toEqual([]);
});

test.each(SLIPS)("“%s” finds %s in spite of the slip", (question, id) => {
  expect(names(question, 3)).toContain(id);
});

test("numbers do not change what is found", () => {
  expect(names('cut 8 2 1/2" strips', 3)).toEqual(names("cut strips", 3));
  expect(names('3.5" hexagon', 3)).toEqual(names("hexagon", 3));
});

test("the beginning of a name finds all functions that begin with it", () => {
  expect(names("cuthalf", 9).sort()).toEqual(["CUTHALFRECTANGLE", "CUTHALFSQUARE"]);
});

test("every question of the table finds its function among the first three", () => {
  const missed = Object.entries(ASKED).flatMap(([id, questions]) =>
    questions.filter((question) => !names(question, 3).includes(id)).map((question) => `${id}: ${question}`),
  );
  expect(missed).toEqual([]);
});

test("ASKED in src/pane/synonyms.ts has questions for every function, and for no other", () => {
  expect(Object.keys(ASKED).sort()).toEqual([...worksheetFunctions.keys()].sort());
});

test.each([
  "zeppelin",
  "xyzzy",
  "banana",
  "weather forecast for paris",
  "what is it",
  "how do you do",
  "12 1/2",
  "  ",
  "?!",
])("“%s” finds nothing", (question) => {
  expect(finder.find(question)).toEqual([]);
});
