/** A count with what is counted: `1 strip`, `3 strips`. */
export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}
