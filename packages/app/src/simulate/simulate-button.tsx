import { Button } from "react-aria-components";
import { screen } from "../desk/screen.ts";
import { Section } from "../panels/section.tsx";

/** Opens what tells how sure a way of measuring is. */
export function SimulateButton() {
	return (
		<Section title="How sure is it">
			<Button className="button" onPress={() => screen.getState().show({ kind: "simulate" })}>
				How often would it fit?
			</Button>
		</Section>
	);
}
