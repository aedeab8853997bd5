import { isSelected, type Selection } from "@baywright/editor";
import { type ReactNode, useEffect, useRef } from "react";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { bringIntoView } from "./bring-into-view.ts";

interface Props {
	readonly thing: Selection;
	/** What it is, aloud: "Opening 2". */
	readonly name: string;
	/** Its sign, as on the plan. */
	readonly sign: ReactNode;
	/** Read while the row is folded away. */
	readonly gist: ReactNode;
	/** Its fields, shown while it is chosen. */
	readonly children: ReactNode;
}

/** One thing of the bay: a row that is chosen with the plan, and shows its fields while it is. */
export function ThingRow({ thing, name, sign, gist, children }: Props) {
	const { kind, index, wall } = thing;
	const chosen = useDesk(({ selection }) => isSelected(selection, kind, index, wall));
	const pointed = useDesk(({ hover }) => isSelected(hover, kind, index, wall));
	const row = useRef<HTMLLIElement>(null);
	const { select, point } = desk.getState();
	useEffect(() => {
		if (chosen && row.current) bringIntoView(row.current);
	}, [chosen]);
	return (
		<li
			ref={row}
			className={`thing${chosen ? " chosen" : ""}${pointed ? " pointed" : ""}`}
			data-row=""
			onPointerEnter={() => point(thing)}
			onPointerLeave={() => point(null)}
		>
			<Button className="thing-head" aria-expanded={chosen} onPress={() => select(chosen ? null : thing)}>
				<span className={`place place-${kind}`} aria-hidden="true">
					{sign}
				</span>
				<span className="hidden">{name}: </span>
				<span className="thing-gist">{gist}</span>
			</Button>
			{chosen ? <div className="thing-detail">{children}</div> : null}
		</li>
	);
}
