/** What holds for every function, said once at the head of the reference. */
export const readingHelp = `Type a function after an equals sign, with its namespace: \`=QUILT.CUTHALFSQUARE(3)\`.

- **Arguments in [brackets]** may be left out; what is usual then stands in their text as "(usual)". An empty cell counts as left
  out. Where 0 has a meaning of its own (no seam, no margin), type 0.
- **Separators.** Formulas here are written with commas and a decimal point, as in \`=QUILT.STRIPFABRIC(5, 2.5)\`. Where your
  spreadsheet uses a decimal comma, it separates arguments with semicolons: \`=QUILT.STRIPFABRIC(5; 2,5)\`. Text lengths keep the
  point: \`"2.5 in"\`.
- **Lengths** may be numbers or text: \`2.5\`, \`"2 1/2"\`, \`"2½"\`, \`"6.35 cm"\`, \`"1 1/4 yd"\`. A text length carries its own unit.
  A cell turns \`3/8\` into a date: type \`0 3/8\`, or \`'3/8\` for text.
- **Units.** With \`"cm"\` as units, bare numbers are centimeters, the metric assumptions apply, lengths come back in
  centimeters and fabric in meters. Amounts of fabric are yards otherwise.
- **Assumptions** where an argument is left out: seam ¼ in (0.75 cm), usable width 42 in (107 cm), ruler mark ⅛ in (0.1 cm),
  shop step ⅛ yd (0.1 m), backing and batting margin 4 in (10 cm) each side, panel seam ½ in (1.5 cm), binding strip 2½ in
  (6.5 cm), binding tail 10 in (25 cm), nothing lost to squaring.
- **Rounding** happens once, at the end, in the safe direction; an exact fit counts as a fit.
- **Errors.** \`#VALUE!\` means that an argument cannot be used, \`#N/A\` that nothing fits. The cell's message says what was expected
  and what came. An empty count gives an empty answer, so that a planning sheet with spare rows stays clean.
- **Ranges.** In the practice sheet, a range where one value is expected gives an answer for each of its cells, which spills,
  as with built-in functions. The add-in's host hands such a range over the same way in versions with dynamic arrays; this
  could not be tried in the host program itself, so type the formula once and fill it down where it does not.

Cut with care: close rotary blades when they are not cutting, mind hot irons and needles, and let no child cut alone. A quilt
does not belong in an infant's sleep space. Whoever sells quilts or kits follows the tax, labeling and product-safety rules of
the place.`;
