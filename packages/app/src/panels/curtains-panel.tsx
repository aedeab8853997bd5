import type { Bay } from "@baywright/setout";
import { useEffect, useRef } from "react";
import { Button } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { PLAIN_CURTAIN } from "../desk/edit-cloth.ts";
import { planOnTable, useBay } from "../desk/on-table.ts";
import { CurtainFields } from "./curtain-fields.tsx";
import { CurtainFigures } from "./curtain-figures.tsx";
import { MakeUpFields } from "./make-up-fields.tsx";
import { Section } from "./section.tsx";

/** What is sewn: each curtain's cloth, heading and stretch, what comes of it, and how all of them are made up. */
export function CurtainsPanel() {
	const count = useBay((bay) => bay.curtains.length);
	const list = useRef<HTMLOListElement>(null);
	const beginning = useRef<HTMLButtonElement>(null);
	const counted = useRef(count);
	const isBegun = useRef(false);
	// What had the focus may be gone, be it pressed or undone; what is to be set first comes next.
	useEffect(() => {
		const isChanged = counted.current !== count;
		const isLost = isChanged && document.activeElement === document.body;
		if (isBegun.current || isLost) (list.current?.querySelector("select") ?? beginning.current)?.focus();
		counted.current = count;
		isBegun.current = false;
	}, [count]);
	const begin = (what: string, change: (bay: Bay) => Bay) => {
		isBegun.current = true;
		editBay(what, change);
	};
	return (
		<Section title="Curtains" gist={count === 0 ? "as drawn" : String(count)}>
			{count === 0 ? (
				<>
					<p className="quiet">
						Nothing is said of what hangs: each stack is taken to be {USUAL_STACK} mm. Make the curtains up for their
						widths of cloth, drops, stacks and weight.
					</p>
					<Button
						ref={beginning}
						className="button"
						onPress={() => begin("make up the curtains", (bay) => ({ ...bay, curtains: [PLAIN_CURTAIN] }))}
					>
						Make up the curtains
					</Button>
					<Button className="button" onPress={() => begin("curtains one by one", asDrawn)}>
						Set the curtains one by one
					</Button>
				</>
			) : (
				<>
					<ol className="curtains" ref={list}>
						{Array.from({ length: count }, (_, index) => (
							// biome-ignore lint/suspicious/noArrayIndexKey: a curtain is known by its index
							<li className="curtain" key={index}>
								<CurtainFields index={index} />
								<CurtainFigures index={index} />
							</li>
						))}
					</ol>
					<Button key="add" className="button" onPress={() => editBay("add a curtain", withCurtain)}>
						Add a curtain
					</Button>
					<MakeUpFields />
				</>
			)}
		</Section>
	);
}

/** As the plan takes it where nothing is said. */
const USUAL_STACK = 150;

/** Another one beside the last: the last gives it the right half of its stretch. */
function withCurtain(bay: Bay): Bay {
	const last = bay.curtains.at(-1);
	const length = planOnTable(desk.getState()).path?.length ?? null;
	if (last === undefined || length === null) return { ...bay, curtains: [...bay.curtains, last ?? PLAIN_CURTAIN] };
	const middle = Math.round(((last.from ?? 0) + (last.to ?? length)) / 2);
	return {
		...bay,
		curtains: [...bay.curtains.slice(0, -1), { ...last, to: middle }, { ...last, from: middle }],
	};
}

/** The curtains that the draw stands for, each on its own. */
function asDrawn(bay: Bay): Bay {
	const length = planOnTable(desk.getState()).path?.length ?? null;
	if (bay.track.draw !== "pair" || length === null) return { ...bay, curtains: [PLAIN_CURTAIN] };
	const middle = Math.round(length / 2);
	return {
		...bay,
		curtains: [
			{ ...PLAIN_CURTAIN, to: middle },
			{ ...PLAIN_CURTAIN, from: middle },
		],
	};
}
