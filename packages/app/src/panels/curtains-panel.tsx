import type { Bay, Curtain } from "@baywright/setout";
import { Button } from "react-aria-components";
import { desk, useDesk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { planOnTable, useBay } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";
import { NumberField } from "../fields/number-field.tsx";
import { Pick } from "../fields/pick.tsx";
import { Section } from "./section.tsx";

/** What is sewn: how curtains meet and return, and each curtain's heading, fullness and drop. */
export function CurtainsPanel() {
	const count = useBay((bay) => bay.curtains.length);
	return (
		<Section title="Curtains" gist={count === 0 ? "as drawn" : String(count)}>
			<MakeUpFields />
			<ol className="curtains">
				{Array.from({ length: count }, (_, index) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: a curtain is known by its index
					<CurtainFields key={index} index={index} />
				))}
			</ol>
			{count === 0 ? (
				<Button className="button" onPress={() => editBay("curtains one by one", asDrawn)}>
					Set the curtains one by one
				</Button>
			) : (
				<Button className="button" onPress={() => editBay("add a curtain", (bay) => withCurtain(bay))}>
					Add a curtain
				</Button>
			)}
			<p className="quiet">
				Kept in the job for the workroom. Finished widths, widths of cloth and metres stand in the command's plan so
				far.
			</p>
		</Section>
	);
}

function MakeUpFields() {
	const makeUp = useBay((bay) => bay.makeUp);
	const set = (key: keyof typeof makeUp) => (mm: number) =>
		editBay(key, (bay) => ({ ...bay, makeUp: { ...bay.makeUp, [key]: mm } }));
	return (
		<div className="field-three">
			<LengthField label="Overlap" value={makeUp.overlap} least={0} commit={set("overlap")} />
			<LengthField label="Returns" value={makeUp.returns} least={0} commit={set("returns")} />
			<LengthField label="Ease" value={makeUp.ease} least={0} commit={set("ease")} />
		</div>
	);
}

function CurtainFields({ index }: { readonly index: number }) {
	const curtain = useBay((bay) => bay.curtains[index]);
	const cloths = useDesk((state) => state.shown.cloths);
	if (curtain === undefined) return null;
	const name = `curtain ${index + 1}`;
	const set = (what: string, part: Partial<Curtain>) =>
		editBay(`${what} of ${name}`, (bay) => ({
			...bay,
			curtains: bay.curtains.map((each, i) => (i === index ? { ...each, ...part } : each)),
		}));
	return (
		<li className="curtain">
			<fieldset>
				<legend>Curtain {index + 1}</legend>
				<Pick
					label="Heading"
					value={curtain.heading}
					options={HEADINGS}
					choose={(to) => set("heading", { heading: to })}
				/>
				<NumberField
					label="Fullness"
					value={curtain.fullness}
					least={1}
					greatest={5}
					commit={(to) => set("fullness", { fullness: to })}
				/>
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
					instead={lengthOfTrack()}
					least={(curtain.from ?? 0) + 1}
					commit={(mm) => set("end", { to: mm })}
					clear={() => set("end", { to: null })}
				/>
				<LengthField
					label="Finished drop"
					value={curtain.drop}
					least={1}
					commit={(mm) => set("drop", { drop: mm })}
					clear={() => set("drop", { drop: null })}
				/>
				{cloths.length === 0 ? null : (
					<Pick
						label="Cloth"
						value={curtain.cloth ?? ""}
						options={[["", "not chosen"], ...cloths.map(({ id, name: called }) => [id, called || id] as const)]}
						choose={(to) => set("cloth", { cloth: to === "" ? null : to })}
					/>
				)}
				<Button
					className="button"
					onPress={() =>
						editBay(`remove ${name}`, (bay) => ({ ...bay, curtains: bay.curtains.filter((_, i) => i !== index) }))
					}
				>
					Remove curtain {index + 1}
				</Button>
			</fieldset>
		</li>
	);
}

const HEADINGS: readonly (readonly [Curtain["heading"], string])[] = [
	["pencil", "pencil pleat"],
	["pinch", "pinch pleat"],
	["goblet", "goblet"],
	["box", "box pleat"],
	["wave", "wave"],
];

const PLAIN: Curtain = { from: null, to: null, cloth: null, heading: "pencil", fullness: 2, drop: null };

const lengthOfTrack = () => planOnTable(desk.getState()).path?.length ?? null;

const withCurtain = (bay: Bay): Bay => ({ ...bay, curtains: [...bay.curtains, bay.curtains.at(-1) ?? PLAIN] });

/** The curtains that the draw stands for, each on its own. */
function asDrawn(bay: Bay): Bay {
	const length = lengthOfTrack();
	if (bay.track.draw !== "pair" || length === null) return { ...bay, curtains: [PLAIN] };
	const middle = Math.round(length / 2);
	return {
		...bay,
		curtains: [
			{ ...PLAIN, to: middle },
			{ ...PLAIN, from: middle },
		],
	};
}
