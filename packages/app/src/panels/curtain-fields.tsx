import { type Curtain, HEADING_NAMES, type Heading } from "@baywright/setout";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { clothsOf, makeOfCloth } from "../desk/edit-cloth.ts";
import { planOnTable, useBay } from "../desk/on-table.ts";
import { screen } from "../desk/screen.ts";
import { LengthField } from "../fields/length-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Pick } from "../fields/pick.tsx";

/** What is set of one curtain. */
export function CurtainFields({ index }: { readonly index: number }) {
	const curtain = useBay((bay) => bay.curtains[index]);
	const job = useDesk((state) => state.shown);
	if (curtain === undefined) return null;
	const name = `curtain ${index + 1}`;
	const set = (what: string, part: Partial<Curtain>) =>
		editBay(`${what} of ${name}`, (bay) => ({
			...bay,
			curtains: bay.curtains.map((each, i) => (i === index ? { ...each, ...part } : each)),
		}));
	return (
		<fieldset>
			<legend>Curtain {index + 1}</legend>
			<div className="cloth-pick">
				<Pick
					label="Cloth"
					value={curtain.cloth ?? ""}
					options={[["", "not chosen"], ...clothsOf(job).map(({ id, name: called }) => [id, called || id] as const)]}
					choose={(to) => makeOfCloth(index, to === "" ? null : to)}
				/>
				<Button
					className="button"
					aria-label={`Cloths for curtain ${index + 1}`}
					onPress={() => screen.getState().show({ kind: "cloths", curtain: index })}
				>
					Cloths
				</Button>
			</div>
			<Pick
				label="Heading"
				value={curtain.heading}
				options={HEADINGS}
				choose={(to) => set("heading", { heading: to })}
			/>
			<NumberField
				label="Fullness"
				value={curtain.fullness}
				least={0.1}
				greatest={50}
				commit={(to) => set("fullness", { fullness: to })}
			/>
			<LengthField
				label="Finished drop"
				value={curtain.drop}
				least={1}
				commit={(mm) => set("drop", { drop: mm })}
				clear={() => set("drop", { drop: null })}
			/>
			<Pick label="Stacks" value={curtain.stacks} options={STACKS} choose={(to) => set("stack", { stacks: to })} />
			<LengthField
				label="From, along the track"
				value={curtain.from}
				instead={0}
				least={0}
				{...(curtain.to === null ? {} : { greatest: curtain.to - 1 })}
				commit={(mm) => set("start", { from: mm })}
				clear={() => set("start", { from: null })}
			/>
			<LengthField
				label="To"
				value={curtain.to}
				instead={planOnTable(desk.getState()).path?.length ?? null}
				least={(curtain.from ?? 0) + 1}
				commit={(mm) => set("end", { to: mm })}
				clear={() => set("end", { to: null })}
			/>
			<Button
				className="button"
				onPress={() =>
					editBay(`remove ${name}`, (bay) => ({ ...bay, curtains: bay.curtains.filter((_, i) => i !== index) }))
				}
			>
				Remove curtain {index + 1}
			</Button>
		</fieldset>
	);
}

const HEADINGS = Object.entries(HEADING_NAMES) as [Heading, string][];

const STACKS: readonly (readonly [Curtain["stacks"], string])[] = [
	["auto", "as it is drawn"],
	["left", "to the left"],
	["right", "to the right"],
	["both", "parts to both sides"],
];
