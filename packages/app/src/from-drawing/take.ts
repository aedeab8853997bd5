import type { Bay } from "@baywright/setout";
import { bayOf, type WallImport } from "@baywright/sheets/read";
import { addToJob, startJob } from "../desk/start-taping.ts";

/** One more bay for the job on the desk; undo takes it back. */
export function addAsBay(walls: WallImport, file: string): void {
	addToJob(jobOf(walls, file).bays[0] as Bay, `add a bay from ${file}`);
}

/** A job of its own; the one on the desk is put aside. */
export function startWith(walls: WallImport, file: string): void {
	startJob(jobOf(walls, file), `start from ${file}`);
}

function jobOf(walls: WallImport, file: string) {
	const name = file.replace(/\.[^.]*$/, "").trim() || "Imported bay";
	return bayOf(walls, { title: name, name, system: null });
}
