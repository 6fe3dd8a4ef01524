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

test.each(FIRST)("“%s” finds %s first", (question, id) => {
  expect(names(question, 1)).toEqual([id]);
});

test.each(AMONG_THREE)("“%s” finds %s among the first three", (question, id) => {
  expect(names(question, 3)).toContain(id);
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

test("words that no function knows find nothing", () => {
  expect(finder.find("zeppelin")).toEqual([]);
  expect(finder.find("  ")).toEqual([]);
});
