import { formatLength } from "@baywright/setout";
import { useDesk } from "../desk/desk.ts";
import { planOnTable, usePlan } from "../desk/on-table.ts";
import { clearNow, useOpened } from "../desk/opened.ts";

/** Glass that the curtains leave clear as they are opened now: of one opening, or of all. Follows a drag. */
export function ClearNow({ opening }: { readonly opening?: number }) {
	const now = useOpened((state) => state);
	const unit = useDesk((state) => state.shown.display.length);
	const clear = useDesk((state) => clearNow(planOnTable(state), now, opening));
	return <span className="figure">{formatLength(clear, unit)}</span>;
}

/** Share of the light that open curtains take, of one opening or of all. */
export function LightLost({ opening }: { readonly opening?: number }) {
	const lost = usePlan(({ glass }) =>
		opening === undefined ? glass.lostOpen : glass.openings.find((one) => one.opening === opening)?.lostOpen,
	);
	return <span className="figure">{lost === undefined ? "–" : `${Math.round(100 * lost)} %`}</span>;
}
