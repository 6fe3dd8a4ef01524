/**
 * Plays the spreadsheet around the unchanged pane page, so that the vendor's real office.js takes it for its host: what the
 * page finds in `window.external`, and the bridge over which functions are called.
 */
import type { Page } from "playwright-core";
import type { Call, Outcome } from "../contract/vendorRuntime";

/** Makes office.js think of the desktop program on Windows; it reads this from the page's address. */
export const HOST_QUERY = "?_host_Info=Excel$Win32$16.01$en-US$telemetry$$disableLogging$1";

declare global {
  interface Window {
    /** Calls registered functions as the spreadsheet would, all in one batch. */
    callFunctions: (calls: readonly Call[]) => Promise<Outcome[]>;
  }
}

/** Prepares a page, before it goes anywhere, to run inside the spreadsheet. */
export async function insideSpreadsheet(page: Page): Promise<void> {
  await page.addInitScript(playSpreadsheet);
}

/** Runs in the page before its own scripts, so it must stand by itself. */
function playSpreadsheet(): void {
  type Answer = [id: number, ok: boolean, value: unknown, code: number];
  interface Action {
    Id: number;
    Name: string;
    ArgumentInfo?: { Arguments: Answer[][] };
  }
  interface Message {
    id: number;
    message?: { body?: string | { Actions?: Action[] } };
  }

  // The last one is the form in which the answers come back.
  const sets = {
    CustomFunctionsRuntime: 1.4,
    SharedRuntime: 1.2,
    RibbonApi: 1.2,
    ExcelApi: 1.17,
    CustomFunctions: 1.9,
  };
  const answers: Record<string, () => unknown> = {
    GetAppType: () => 1,
    GetAppVersionMajor: () => 16,
    GetAppVersionMinor: () => 1,
    GetHostFullVersion: () => "16.0.17928.20114",
    GetAppUILocale: () => 1033,
    GetAppDataLocale: () => 1033,
    GetAppCapabilities: () => 1,
    GetSupportedMatrix: () => JSON.stringify(sets),
    GetDocUrl: () => "quilt.xlsx",
    GetSolutionRef: () => "00000000-0000-0000-0000-000000000001",
    GetSolutionToken: () => "",
    GetActivationMode: () => 0,
    GetControlIntegrationLevel: () => 1,
    GetInitialDisplayMode: () => 0,
    GetTouchEnabled: () => false,
    GetSettings: () => ({ Read: () => undefined, Write: () => undefined }),
  };
  Object.defineProperty(window, "external", { value: { GetContext: () => answers } });

  const waiting = new Map<number, (outcome: Outcome) => void>();
  let lastId = 0;
  const bridge = {
    onMessageFromHost: undefined as ((text: string) => void) | undefined,
    sendMessageToHost(text: string) {
      const { id, message } = JSON.parse(text) as Message;
      const sent = message?.body;
      const body = typeof sent === "string" ? (JSON.parse(sent) as { Actions?: Action[] }) : sent;
      const actions = body?.Actions ?? [];
      for (const { Name, ArgumentInfo } of actions) {
        if (Name !== "SetInvocationArrayResults") continue;
        for (const [call, ok, value, code] of ArgumentInfo!.Arguments[0])
          waiting.get(call)?.(ok ? { ok, value } : { ok, code, message: String(value) });
      }
      const results = actions.map((action) => ({ ActionId: action.Id, Value: null }));
      const reply = { statusCode: 200, headers: {}, body: JSON.stringify({ Results: results }) };
      setTimeout(() => {
        bridge.onMessageFromHost!(JSON.stringify({ id, type: 2, message: reply }));
      });
    },
  };
  Object.assign(window, { _richApiNativeBridge: bridge });
  window.callFunctions = (calls) => {
    const entries = calls.map(([name, cells]) => {
      const id = ++lastId;
      return [1, 1000, "", [id, name, cells, null, 0, null], id] as const;
    });
    const outcomes = entries.map(([, , , , id]) => new Promise<Outcome>((resolve) => waiting.set(id, resolve)));
    bridge.onMessageFromHost!(JSON.stringify({ type: 3, message: { entries } }));
    return Promise.all(outcomes);
  };
}
