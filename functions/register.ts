/** Registers every function with the host. The bundle for the host starts here. */
import { worksheetFunctions } from "./index";

for (const [id, run] of worksheetFunctions) CustomFunctions.associate(id, run);
