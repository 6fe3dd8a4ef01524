/** What is told of the functions, in a file of its own beside the page. */
import type { Family } from "../pane/catalogue";

let reading: Promise<Family[]> | undefined;

/** Every family; fetched once, and again where that failed. */
export function readFamilies(): Promise<Family[]> {
  reading ??= fetchFamilies().catch((thrown: unknown) => {
    reading = undefined;
    throw thrown;
  });
  return reading;
}

async function fetchFamilies(): Promise<Family[]> {
  const response = await fetch("catalogue.json");
  return (await response.json()) as Family[];
}
