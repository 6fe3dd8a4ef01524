/** What a page that strangers have a hand in could try; a page with a strict policy lets none of it happen. */

declare global {
  interface Window {
    /** Called by whatever runs that must not. */
    ran: (what: string) => void;
  }
}

/**
 * Tries to run scripts, and to reach another address. Runs in the page, so it must stand by itself.
 *
 * @param elsewhere another address, where nothing must be asked for
 * @returns what ran
 */
export async function tryEverything(elsewhere: string): Promise<string[]> {
  const ran: string[] = [];
  window.ran = (what) => ran.push(what);
  const add = (tag: string, attributes: Record<string, string>, text = "") => {
    const made = document.createElement(tag);
    for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
    made.textContent = text;
    document.body.append(made);
    return made;
  };
  const code = (what: string) => `(window.ran || parent.ran)("${what}")`;
  const blob = (text: string, type: string) => URL.createObjectURL(new Blob([text], { type }));
  const attempts = [
    () => add("script", {}, code("a script in the page")),
    () => add("script", { src: `data:text/javascript,${code("a script in an address")}` }),
    () => add("script", { src: blob(code("a script made in the page"), "text/javascript") }),
    () => add("script", { src: `${elsewhere}/script.js` }),
    () => {
      add("p", { onclick: code("an attribute") }).click();
    },
    () => add("img", { src: "nowhere:", onerror: code("an error handler") }),
    () => {
      add("a", { href: `javascript:${code("a link")}` }).click();
    },
    () => add("iframe", { srcdoc: `<script>${code("a page in the page")}</script>` }),
    () => add("iframe", { src: `${elsewhere}/page.html` }),
    () => add("object", { data: `${elsewhere}/object.svg` }),
    () => add("link", { rel: "stylesheet", href: `${elsewhere}/style.css` }),
    () => add("img", { src: `${elsewhere}/image.png` }),
    () => {
      eval(code("eval"));
    },
    () => {
      // eslint-disable-next-line @typescript-eslint/no-implied-eval, @typescript-eslint/no-unsafe-call -- what must be refused
      new Function(code("a function from text"))();
    },
    () => {
      // eslint-disable-next-line @typescript-eslint/no-implied-eval -- what must be refused
      setTimeout(code("a timer"), 0);
    },
    () => {
      new Worker(blob(`fetch("${elsewhere}/worker")`, "text/javascript"));
    },
    () => fetch(`${elsewhere}/fetch`, { mode: "no-cors" }).catch(() => undefined),
    () => navigator.sendBeacon(`${elsewhere}/beacon`, "size"),
    () => new WebSocket(elsewhere.replace("http", "ws")),
    () => new EventSource(`${elsewhere}/events`),
    () => {
      const form = add("form", { action: `${elsewhere}/form`, target: "_blank" });
      (form as HTMLFormElement).submit();
    },
    () => {
      add("base", { href: `${elsewhere}/` });
      add("img", { src: "base.png" });
    },
  ];
  // What the test's own call runs is exempt from the policy for texts that become scripts.
  await new Promise((resolve) => setTimeout(resolve, 50));
  for (const attempt of attempts) {
    try {
      attempt();
    } catch {
      // Refused on the spot.
    }
  }
  await new Promise((resolve) => setTimeout(resolve, 1500));
  return ran;
}
