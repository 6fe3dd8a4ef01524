/** Formulas on their way to a file and back. */
import { callsQuilt, fromFile, toFile } from "../../src/practice/xlsx/formulas";

test.each([
  ["=QUILT.CUTSQUARE(B2)", "_xldudf_QUILT_CUTSQUARE(B2)"],
  ["=quilt.CutSquare(B2)+1", "_xldudf_QUILT_CUTSQUARE(B2)+1"],
  ["=SUM(QUILT.CUTSQUARE(1),QUILT.CUTSQUARE(2))", "SUM(_xldudf_QUILT_CUTSQUARE(1),_xldudf_QUILT_CUTSQUARE(2))"],
  ['="QUILT.CUTSQUARE("&A1', '"QUILT.CUTSQUARE("&A1'],
  ["='QUILT.X'!A1", "'QUILT.X'!A1"],
  ["=SEQUENCE(3)", "_xlfn.SEQUENCE(3)"],
  ["=SORT(FILTER(A1:A3,B1:B3))", "_xlfn._xlws.SORT(_xlfn._xlws.FILTER(A1:A3,B1:B3))"],
  ["=LET(x,3,y,x,x*y)", "_xlfn.LET(_xlpm.x,3,_xlpm.y,_xlpm.x,_xlpm.x*_xlpm.y)"],
  ["=MAP(A1:A3,LAMBDA(side,side+1))", "_xlfn.MAP(A1:A3,_xlfn.LAMBDA(_xlpm.side,_xlpm.side+1))"],
])("%s is stored as %s, and comes back", (typed, stored) => {
  expect(toFile(typed)).toBe(stored);
  expect(fromFile(stored).toUpperCase()).toBe(typed.toUpperCase());
});

test.each([
  ["[2]!_xldudf_QUILT_CUTSQUARE(B2)", "=QUILT.CUTSQUARE(B2)"],
  ["'C:\\add-ins\\it''s [here].xlsx'!_xldudf_QUILT_CUTSQUARE(B2)", "=QUILT.CUTSQUARE(B2)"],
  ["QUILT.CUTSQUARE(B2)", "=QUILT.CUTSQUARE(B2)"],
  ["@_xldudf_quilt_cutsquare(B2)", "=QUILT.CUTSQUARE(B2)"],
  ['"[2]!_xldudf_QUILT_X"&A1', '="[2]!_xldudf_QUILT_X"&A1'],
])("%s is opened as %s", (stored, typed) => {
  expect(fromFile(stored)).toBe(typed);
});

test("a call is told from text", () => {
  expect(callsQuilt("=1+QUILT.CUTSQUARE(2)")).toBe(true);
  expect(callsQuilt('="QUILT.CUTSQUARE(2)"')).toBe(false);
});
