/**
 * The vendor's own custom-functions-runtime.js, in a context of its own. This file plays the spreadsheet's side: it sends
 * calls over the bridge that the runtime looks for when it loads, and collects the answers.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import vm from "node:vm";

/** What comes back for one call: the value for the cell, or the number of the cell error and its sentence. */
export type Outcome = { ok: true; value: unknown } | { ok: false; code: number; message: string };

/** The vendor's numbers for the outcomes that the project knows. */
export const CODES = { notAvailable: 1, thrown: 2, rejected: 3, invalidValue: 7 } as const;

export type Call = readonly [id: string, cells: readonly unknown[]];

export interface VendorRuntime {
  /** Runs a script, as the page would, and gives its last value. */
  run: (script: string) => unknown;
  /** Sends all calls in one batch. The runtime converts no argument: cells left out must be null. */
  call: (calls: readonly Call[]) => Promise<Outcome[]>;
  /** The names that scripts have associated so far. */
  associated: () => string[];
}

/** Kinds of messages on the bridge. */
const RESPONSE = 2;
const EVENTS = 3;

/** The only event that matters here: a batch of functions to call. */
const CALL_FUNCTIONS = [1, 1000, ""] as const;

/** Delays at or above this are the script loader's time limits; shorter ones only gather calls, and need no waiting. */
const TIME_LIMIT = 10_000;

interface Bridge {
  onMessageFromHost?: (text: string) => void;
  sendMessageToHost: (text: string) => void;
}

interface Request {
  id: number;
  message?: { body?: { Actions?: Action[] } };
}

interface Action {
  Id: number;
  Name: string;
  ArgumentInfo?: { Arguments: [id: number, ok: boolean, value: unknown, code: number][][] };
}

export function loadVendorRuntime(): VendorRuntime {
  const waiting = new Map<number, (outcome: Outcome) => void>();
  let lastId = 0;

  const bridge: Bridge = {
    sendMessageToHost(text) {
      const { id, message } = JSON.parse(text) as Request;
      const actions = message?.body?.Actions ?? [];
      for (const { Name, ArgumentInfo } of actions) {
        if (Name === "SetInvocationArrayResults") ArgumentInfo!.Arguments[0].forEach(settle);
      }
      const body = JSON.stringify({ Results: actions.map((action) => ({ ActionId: action.Id, Value: null })) });
      queueMicrotask(() => {
        send({ id, type: RESPONSE, message: { statusCode: 200, headers: {}, body } });
      });
    },
  };

  function send(message: object): void {
    bridge.onMessageFromHost!(JSON.stringify(message));
  }

  function settle([id, ok, value, code]: [number, boolean, unknown, number]): void {
    waiting.get(id)?.(ok ? { ok, value } : { ok, code, message: String(value) });
    waiting.delete(id);
  }

  const page = pageWith(bridge);
  const run = (script: string): unknown => vm.runInContext(script, page);
  const folder = join(require.resolve("@microsoft/office-js/package.json"), "..", "dist");
  run(readFileSync(join(folder, "custom-functions-runtime.js"), "utf8"));

  return {
    run,
    associated: () => Object.keys(vm.runInContext("CustomFunctions._association.mappings", page) as object),
    call(calls) {
      // The runtime fails on an empty batch, which no spreadsheet sends.
      if (calls.length === 0) return Promise.resolve([]);
      const answers = calls.map(() => {
        const id = ++lastId;
        return { id, outcome: new Promise<Outcome>((resolve) => waiting.set(id, resolve)) };
      });
      const entries = calls.map(([name, cells], index) => {
        const { id } = answers[index];
        return [...CALL_FUNCTIONS, [id, name, cells, null, 0, null], id];
      });
      send({ type: EVENTS, message: { entries } });
      return Promise.all(answers.map(({ outcome }) => outcome));
    },
  };
}

/** The little of a page that the runtime touches while it loads. */
function pageWith(bridge: Bridge): vm.Context {
  const element = { setAttribute: nothing, getAttribute: () => null, appendChild: nothing };
  const script = { ...element, src: "http://localhost/custom-functions-runtime.js" };
  const page: Record<string, unknown> = {
    _richApiNativeBridge: bridge,
    document: {
      readyState: "complete",
      addEventListener: nothing,
      createElement: () => element,
      getElementById: () => null,
      getElementsByTagName: (tag: string) => [tag === "script" ? script : element],
    },
    navigator: { userAgent: "node" },
    location: { search: "", hash: "", href: "http://localhost/", protocol: "http:" },
    history: {},
    name: "",
    console: { log: nothing, warn: nothing, error: nothing },
    addEventListener: nothing,
    XMLHttpRequest: nothing,
    setTimeout: (run: (...values: unknown[]) => void, delay: number, ...values: unknown[]) =>
      delay < TIME_LIMIT ? setTimeout(run, 0, ...values) : 0,
    clearTimeout,
    setInterval: () => 0,
    clearInterval: nothing,
  };
  for (const name of ["window", "self", "top", "parent"]) page[name] = page;
  return vm.createContext(page);
}

function nothing(): void {
  // The runtime only wants to be able to call it.
}
