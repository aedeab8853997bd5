import { isSelected } from "@baywright/editor";
import type { ReactNode, Ref } from "react";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";

interface Props {
	readonly index: number;
	readonly line?: Ref<HTMLTableRowElement>;
	/** How its load stands to the limit. */
	readonly standing?: string;
	readonly children: ReactNode;
}

/** A bracket's line in a table: its number chooses it, the pointer over it shows it on the plan. */
export function BracketLine({ index, line, standing, children }: Props) {
	const chosen = useDesk((state) => isSelected(state.selection, "bracket", index));
	const pointed = useDesk((state) => isSelected(state.hover, "bracket", index));
	const { select, point } = desk.getState();
	return (
		<tr
			ref={line}
			className={`row${chosen ? " chosen" : ""}${pointed ? " pointed" : ""}`}
			data-standing={standing}
			onPointerEnter={() => point({ kind: "bracket", index })}
			onPointerLeave={() => point(null)}
		>
			<th scope="row">
				<Button
					className="place place-bracket"
					aria-label={`Bracket ${index + 1}`}
					aria-pressed={chosen}
					onPress={() => select(chosen ? null : { kind: "bracket", index })}
				>
					{index + 1}
				</Button>
			</th>
			{children}
		</tr>
	);
}
