/** Lengths and amounts: reading, writing and rounding them. */
import { either, plain } from "./formula";
import { fabricToBuy, twin, type Twins } from "./template";

export const length: Twins = {
  LENGTH: twin("length units", "amount", (read) => {
    read.staysEmpty(read.isEmpty("length"));
    return read.emptyIf === true ? '""' : read.lengthOrZero("length");
  }),

  LENGTHTEXT: twin("length denominator units", "text", (read) => {
    read.staysEmpty(read.isEmpty("length"));
    if (read.emptyIf === true) return '""';
    const value = read.signedLength("length");
    const parts = read.count("denominator", { in: 8, cm: 10 }, 1);
    const marks = plain`INT(ROUND(ABS(${value})*${parts},9)+0.5)`;
    const [whole, over] = [plain`INT(${marks}/${parts})`, plain`MOD(${marks},${parts})`];
    const divisor = plain`GCD(${over},${parts})`;
    const fraction = plain`${over}/${divisor}&"/"&${parts}/${divisor}`;
    const sign = plain`IF(AND(${value}<0,${marks}>0),"-","")`;
    const mixed = plain`IF(${over}=0,${whole},IF(${whole}=0,"",${whole}&" ")&${fraction})`;
    const decimal = plain`ROUND(IF(${value}<0,-1,1)*${marks}/${parts},4)&""`;
    return either(read.metric, decimal, `${sign}&${mixed}`);
  }),

  FABRIC: twin("length step units", "amount", (read) => fabricToBuy(read, read.longLength("length"))),
};
