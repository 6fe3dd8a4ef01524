/** What a computation refuses, for tests. */
import { Problem } from "../src/math/problem";

/** The kind and sentence of the refusal; "accepted" where there is none. Anything else that is thrown goes on. */
export function refusalOf(run: () => unknown): string {
  try {
    run();
  } catch (thrown) {
    if (thrown instanceof Problem) return `${thrown.kind}: ${thrown.message}`;
    throw thrown;
  }
  return "accepted";
}
