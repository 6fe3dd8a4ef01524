/** The error sentence beside a cell, on hover and on selection. */
import type { IDisposable, Injector } from "@univerjs/core";
import { CellAlertManagerService, SheetCanvasPopManagerService } from "@univerjs/sheets-ui";
import { ComponentManager, type IPopup } from "@univerjs/ui";
import { createElement, type ReactElement } from "react";
import { type Place, samePlace } from "./calculator";
import type { Explainer, Explanation } from "./explain";

/** Under this key the view shows its own few words about an error when the mouse is over the cell. */
const HOVER = "SHEET_FORMULA_ALERT";

const COMPONENT = "piecewise-error-sentence";

export class ErrorPopup {
  private readonly canvas: SheetCanvasPopManagerService;
  private hovered: object | undefined;
  /** Whether the selected cell has its sentence beside it, or only the one under the mouse. */
  onSelection = true;
  private besideHovered: IDisposable | undefined;
  private besideSelected: IDisposable | undefined;
  private selected: Place | undefined;

  constructor(injector: Injector, explainer: Explainer) {
    this.canvas = injector.get(SheetCanvasPopManagerService);
    injector.get(ComponentManager).register(COMPONENT, ErrorSentence);
    const alerts = injector.get(CellAlertManagerService);
    const show = alerts.showAlert.bind(alerts);
    const remove = alerts.removeAlert.bind(alerts);
    alerts.showAlert = (alert) => {
      if (alert.key !== HOVER) {
        show(alert);
        return;
      }
      const { unitId, subUnitId, row, col } = alert.location;
      const place = { unitId, sheetId: subUnitId, row, column: col };
      this.hovered = alert;
      void explainer.explain(place).then((explanation) => {
        if (!explanation || this.hovered !== alert || samePlace(place, this.selected)) return;
        this.besideHovered = this.attach(place, explanation);
      });
    };
    alerts.removeAlert = (key) => {
      if (key === HOVER) this.endHover();
      remove(key);
    };
  }

  /** Shows the sentence of the selected cell, or takes away the last one. */
  select(place: Place | undefined, explanation: Explanation | undefined): void {
    this.besideSelected?.dispose();
    this.besideSelected = undefined;
    this.selected = this.onSelection && explanation ? place : undefined;
    if (!this.selected || !explanation) return;
    this.endHover();
    this.besideSelected = this.attach(this.selected, explanation);
  }

  private endHover(): void {
    this.hovered = undefined;
    this.besideHovered?.dispose();
    this.besideHovered = undefined;
  }

  private attach(place: Place, explanation: Explanation): IDisposable | undefined {
    const popup = { componentKey: COMPONENT, direction: "vertical" as const, extraProps: { explanation } };
    return this.canvas.attachPopupToCell(place.row, place.column, popup, place.unitId, place.sheetId) ?? undefined;
  }
}

function ErrorSentence({ popup }: { popup: IPopup<{ explanation: Explanation }> }): ReactElement | null {
  const explanation = popup.extraProps?.explanation;
  if (!explanation) return null;
  const { code, sentence } = explanation;
  return createElement("div", { className: "error-sentence" }, createElement("b", null, code), " ", sentence);
}
