import { Button } from "react-aria-components";
import { screen } from "../desk/screen.ts";

/** Everything that can be done, by its words. */
export function CommandsButton() {
	return (
		<Button
			className="button commands-button"
			aria-keyshortcuts="Control+K Meta+K"
			onPress={() => screen.getState().show({ kind: "commands" })}
		>
			Commands
		</Button>
	);
}
