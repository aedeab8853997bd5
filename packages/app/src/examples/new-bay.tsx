import { emptyBay } from "@baywright/editor";
import { addToJob } from "../desk/start-taping.ts";
import { PlainCards } from "./plain-cards.tsx";

/** One more bay for the job on the desk. */
export function NewBay() {
	return (
		<PlainCards
			take={(bay, title) => addToJob(bay, `add ${title.charAt(0).toLowerCase()}${title.slice(1)}`)}
			tape={() => addToJob(emptyBay(), "add a bay to tape")}
		/>
	);
}
