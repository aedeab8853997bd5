import type { ThingKind } from "@baywright/editor";
import { Button } from "react-aria-components";
import { useDesk } from "../desk/desk.ts";
import { type Stage, setStage, useScreen } from "../desk/screen.ts";
import { STAGE_WORDS } from "./stage-words.ts";

/** What is chosen on the plan has its row in another stage: one press goes there. */
export function ChosenElsewhere() {
	const stage = useScreen((state) => state.stage);
	const kind = useDesk(({ selection }) => selection?.kind ?? null);
	const home = kind === null ? [] : HOMES[kind].stages;
	const [first] = home;
	if (kind === null || first === undefined || home.includes(stage)) return null;
	return (
		<p className="chosen-elsewhere">
			<Button className="button" onPress={() => setStage(first)}>
				The chosen {HOMES[kind].word} is in {STAGE_WORDS[first]}
			</Button>
		</p>
	);
}

interface Home {
	readonly word: string;
	/** The first is gone to; none for what is always in sight. */
	readonly stages: readonly Stage[];
}

const HOMES: Readonly<Record<ThingKind, Home>> = {
	corner: { word: "corner", stages: ["survey", "track"] },
	wall: { word: "wall", stages: ["survey"] },
	bow: { word: "bow", stages: ["survey", "track"] },
	opening: { word: "opening", stages: ["survey"] },
	obstacle: { word: "obstacle", stages: ["survey"] },
	"no-drill": { word: "stretch", stages: ["survey"] },
	"track-end": { word: "track end", stages: ["track"] },
	bend: { word: "bend", stages: ["track"] },
	bracket: { word: "bracket", stages: ["track"] },
	joint: { word: "joint", stages: ["track"] },
	piece: { word: "piece", stages: [] },
	reading: { word: "reading", stages: [] },
	finding: { word: "finding", stages: [] },
};
