import { emptyBay } from "@baywright/editor";
import { addToJob } from "../desk/start-taping.ts";
import { lower } from "../fields/lower.ts";
import { PlainCards } from "./plain-cards.tsx";

/** One more bay for the job on the desk. */
export function NewBay() {
	return (
		<PlainCards
			take={(bay, title) => addToJob(bay, `add ${lower(title)}`)}
			tape={() => addToJob(emptyBay(), "add a bay to tape")}
		/>
	);
}
