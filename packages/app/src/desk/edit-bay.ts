import { onBay } from "@baywright/editor";
import type { Bay } from "@baywright/setout";
import { desk } from "./desk.ts";

/** Changes the bay on the table as one step of the history. Null, as a field takes it: nothing is wrong. */
export function editBay(label: string, change: (bay: Bay) => Bay): null {
	const { job, bay, commit } = desk.getState();
	commit(label, onBay(job, bay, change));
	return null;
}
