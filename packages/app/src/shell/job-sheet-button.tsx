import { Button } from "react-aria-components";
import { screen } from "../desk/screen.ts";

export function JobSheetButton() {
	return (
		<Button className="button button-icon" aria-label="Job" onPress={() => screen.getState().show({ kind: "job" })}>
			<svg viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
				<path d="M3 5.5h14M3 10h14M3 14.5h14" stroke="currentColor" strokeWidth="2" />
			</svg>
		</Button>
	);
}
