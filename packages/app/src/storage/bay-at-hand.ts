import { desk } from "../desk/desk.ts";
import { bayOnTable } from "../desk/on-table.ts";

const BAY_KEY = "baywright-bay";

/** Puts the bay of before the reload on the table again, so that what is taped next is not taped into another. */
export function toBayAtHand(): void {
	const { job, showBay } = desk.getState();
	const index = job.bays.findIndex(({ id }) => id === kept());
	if (index > 0) showBay(index);
}

/** Remembers for this visit which bay is on the table; another tab has its own. */
export function rememberBayAtHand(): () => void {
	return desk.subscribe((now, before) => {
		const { id } = bayOnTable(now);
		if (id === bayOnTable(before).id) return;
		try {
			sessionStorage.setItem(BAY_KEY, id);
		} catch {
			// A browser that keeps nothing starts at the first bay again.
		}
	});
}

function kept(): string | null {
	try {
		return sessionStorage.getItem(BAY_KEY);
	} catch {
		return null;
	}
}
