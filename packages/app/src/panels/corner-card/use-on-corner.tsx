import { useState } from "react";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../../desk/desk.ts";
import { screen } from "../../desk/screen.ts";
import type { CardInput } from "./card-input.ts";
import { cornerEdits } from "./corner-edits.ts";

interface Props {
	readonly input: CardInput;
	readonly corner: number;
	/** Something typed was refused: the card does not say what is meant. */
	readonly unsure: boolean;
}

/** Carries the card's figures over to a corner of the bay, as one undo step: only those that differ. */
export function UseOnCorner({ input, corner, unsure }: Props) {
	const words = useDesk((state) =>
		cornerEdits(state, input, corner)
			.map((edit) => edit.word)
			.join(", "),
	);
	const [refusal, setRefusal] = useState("");

	function apply(): void {
		const state = desk.getState();
		const operations = cornerEdits(state, input, corner).flatMap((edit) => edit.operations);
		const said = state.change(`corner card on corner ${corner}`, operations);
		if (said === null) screen.getState().close();
		else setRefusal(said);
	}

	const standing = words === "" ? `Corner ${corner} stands like this already.` : `Sets ${words}.`;
	return (
		<div className="card-use">
			<Button className="button button-main" isDisabled={unsure || words === ""} onPress={apply}>
				Use on corner {corner}
			</Button>
			<p className="quiet" role="status">
				{unsure ? "" : refusal === "" ? standing : refusal}
			</p>
		</div>
	);
}
