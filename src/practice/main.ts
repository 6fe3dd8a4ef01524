/** The practice sheet's page: opens a sheet, keeps it, and gives its commands. */
import { Page } from "./page";

void Page.open();
