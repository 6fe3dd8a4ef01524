/** A plan of our own for tests of the pane: a throw quilt for a class. */
import type { Content } from "./memorySheet";

export function throwPlan(): Record<string, Content> {
  return {
    A1: "Harbor lights throw",
    A3: "Half-square unit, finished",
    B3: "4 1/2",
    A4: "Units across",
    B4: 10,
    A5: "Units down",
    B5: 12,
    A7: "Squares for the units",
    B7: "=QUILT.CUTHALFSQUARE(B3)",
    A8: "Strips of squares, light",
    B8: "=QUILT.STRIPSNEEDED(B4*B5/2,B7)",
    A9: "Light fabric",
    B9: "=QUILT.STRIPFABRIC(B8,B7)",
    A10: "Dark fabric",
    B10: "=QUILT.STRIPFABRIC(B8,B7)",
    A11: "Top without border",
    B11: "=QUILT.TOPSIZE(B4,B5,B3)",
    A12: "Border fabric",
    B12: "=QUILT.BORDERFABRIC(45,54,5)",
    A13: "Border strips",
    B13: "=QUILT.BORDERSTRIPS(45,54,5)",
    A14: "Backing",
    B14: "=QUILT.BACKINGFABRIC(55,64)",
    A15: "Batting",
    B15: "=QUILT.BATTINGSIZE(55,64)",
    A16: "Binding",
    B16: "=QUILT.BINDINGFABRIC(55,64)",
    A17: "Border pieces",
    B17: "=QUILT.BORDERLENGTHS(45,54,5)",
    D3: "light",
    E3: 5.5,
    F3: 5.5,
    G3: 60,
    D4: "sash",
    E4: 2.5,
    F4: 12.5,
    G4: 24,
    A20: "Cutting plan",
    B20: "=QUILT.PLAN(D3:G4)",
    A22: "A slip",
    B22: '=QUILT.CUTSQUARE("three")',
    A23: "Nothing of ours",
    B23: "=B4*2",
  };
}

/** A quilt of two blocks, drawn in cells below one another, with its layout, sashing and border. */
export function quiltPlan(): Record<string, Content> {
  const rows = {
    A1: ["star", "sand", "sand / slate", "sand"],
    A2: ["", "sand \\ slate", "rust", "slate \\ sand"],
    A3: ["", "sand", "slate / sand", "sand"],
    A4: ["plain", "rust"],
    F1: ["star", "plain", "star 90"],
    F2: ["plain", "star 180", "plain"],
    A6: ["sashing", 1, "sand", "slate"],
    A7: ["border", 2, "slate"],
  };
  const cells: Record<string, Content> = {
    A10: "To buy",
    B10: "=QUILT.QUILTFABRICS(F1:H2,A1:D4,6,B6:D6,,B7:C7)",
    A11: "The star",
    B11: "=QUILT.BLOCKPIECES(B1:D3,6)",
    A12: "Other sizes",
    B12: "=QUILT.SIZETABLE(F1:H2,A1:D4,6,B6:D6)",
  };
  for (const [first, texts] of Object.entries(rows)) {
    texts.forEach((text, index) => {
      const name = `${String.fromCharCode(first.charCodeAt(0) + index)}${first.slice(1)}`;
      if (text !== "") cells[name] = text;
    });
  }
  return cells;
}
