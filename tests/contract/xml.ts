/** Just enough XML for a manifest: elements in their order, attributes and text; what is not well formed is refused. */

export interface Element {
  name: string;
  attributes: Record<string, string>;
  children: Element[];
  text: string;
}

const TOKEN = /<\?[^>]*\?>|<!--[\s\S]*?-->|<(\/?)([\w:.-]+)((?:\s+[\w:.-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;

export function readXml(text: string): Element {
  const document: Element = { name: "", attributes: {}, children: [], text: "" };
  const open = [document];
  let end = 0;
  for (const [token, closing, name, attributes, empty, content] of text.matchAll(TOKEN)) {
    end += token.length;
    const inside = open[open.length - 1];
    if (content) {
      inside.text += content.trim();
    } else if (closing) {
      if (inside.name !== name) throw new Error(`<${inside.name}> is closed by </${name}>`);
      open.pop();
    } else if (name) {
      const pairs = [...attributes.matchAll(/([\w:.-]+)="([^"]*)"/g)].map(([, key, value]) => [key, value]);
      const element = { name, attributes: Object.fromEntries(pairs) as Record<string, string>, children: [], text: "" };
      inside.children.push(element);
      if (!empty) open.push(element);
    }
  }
  if (end !== text.length || open.length !== 1 || document.children.length !== 1) {
    throw new Error(`not well formed near: ${text.slice(end, end + 60)}`);
  }
  return document.children[0];
}

/** The elements of this name directly inside. */
export function children(element: Element, name: string): Element[] {
  return element.children.filter((child) => child.name === name);
}

/** The elements of this name inside, at any depth, in the order in which they are written. */
export function descendants(element: Element, name: string): Element[] {
  return element.children.flatMap((child) => [...(child.name === name ? [child] : []), ...descendants(child, name)]);
}
