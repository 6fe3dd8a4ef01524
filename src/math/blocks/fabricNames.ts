/** Names of fabrics: any text the maker likes, whatever its capitals and spaces. */

/** Marks that draw units in a block and therefore stand in no name. */
const RESERVED = /[/\\+,:<^]/;

/** Why a text is no fabric's name, or undefined where it is one. */
export function refuseFabric(text: string): string | undefined {
  const name = text.trim();
  if (name === "") return "a fabric's name is missing";
  return RESERVED.test(name) ? `“${name}” is no fabric's name: / \\ + , : < and ^ draw units` : undefined;
}

/** Knows each fabric by the first spelling of its name. */
export class FabricNames {
  private readonly spellings = new Map<string, string>();

  /** The spelling under which the fabric is known; a new name becomes known by this one. */
  spelling(text: string): string {
    const name = text.trim().replace(/\s+/g, " ");
    const key = name.toLowerCase();
    const known = this.spellings.get(key);
    if (known !== undefined) return known;
    this.spellings.set(key, name);
    return name;
  }

  /** The known spelling of a fabric, or undefined. */
  find(text: string): string | undefined {
    return this.spellings.get(text.trim().replace(/\s+/g, " ").toLowerCase());
  }
}
