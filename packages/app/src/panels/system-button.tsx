import { Button } from "react-aria-components";
import { usePlan } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";

/** The track system in use; opens the sheet that compares them. */
export function SystemButton() {
	const name = usePlan((plan) => plan.system.name);
	return (
		<Button
			className="select-button"
			aria-label={`Track system: ${name}. Change`}
			onPress={() => screen.getState().show({ kind: "systems" })}
		>
			{name}
			<span className="select-change" aria-hidden="true">
				change
			</span>
		</Button>
	);
}
