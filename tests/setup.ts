import { standInForHost } from "../functions/standIn";

standInForHost();
