import { capital, cornerName, type Reading } from "@baywright/setout";
import { useState } from "react";
import { useBay } from "../desk/on-table.ts";
import { LengthField } from "../fields/length-field.tsx";
import { Pick } from "../fields/pick.tsx";
import { WallPick } from "../panels/wall-pick.tsx";
import type { Untaken } from "./usual-readings.ts";
import { TakeField, useWording } from "./value-field.tsx";

const KINDS = [
	["run", "Run of a wall"],
	["diagonal", "Diagonal"],
	["angle", "Angle at a corner"],
	["chord", "Chord at a corner"],
	["rise", "Rise of a wall"],
	["square", "Square of a corner from a wall"],
] as const satisfies readonly (readonly [Reading["kind"], string])[];

/** Read at corners between two walls only. */
const BETWEEN: readonly Reading["kind"][] = ["angle", "chord"];

/** Long arms make a chord a sharp reading, mm. */
const USUAL_ARM = 600;

/** Any reading, by its kind and place; typing what it reads takes it. */
export function AddReading() {
	const { walls } = useWording();
	const [chosen, setChosen] = useState<Reading["kind"]>("run");
	const [places, setPlaces] = useState({ wall: 0, corner: 1, from: 0, to: 2, arm: USUAL_ARM });
	const kinds = KINDS.filter(([kind]) => kind === "run" || kind === "rise" || walls > 1);
	const kind = kinds.some(([each]) => each === chosen) ? chosen : "run";
	const set = (part: Partial<typeof places>) => setPlaces({ ...places, ...part });
	const wall = Math.min(places.wall, walls - 1);
	const isBetween = BETWEEN.includes(kind);
	const corner = isBetween ? Math.min(Math.max(places.corner, 1), walls - 1) : Math.min(places.corner, walls);
	const from = Math.min(places.from, walls);
	const to = Math.min(places.to, walls);
	const untaken = untakenReading(kind, { wall, corner, from, to, arm: places.arm });
	return (
		<details className="reading-add">
			<summary>Add another reading</summary>
			<div className="reading-add-fields">
				<Pick label="Kind" value={kind} options={kinds} choose={setChosen} />
				{"wall" in untaken ? <WallPick wall={wall} choose={(each) => set({ wall: each })} /> : null}
				{"corner" in untaken ? (
					<CornerPick
						label="Corner"
						corner={corner}
						least={isBetween ? 1 : 0}
						most={isBetween ? walls - 1 : walls}
						choose={(each) => set({ corner: each })}
					/>
				) : null}
				{kind === "diagonal" ? (
					<>
						<CornerPick label="From" corner={from} most={walls} choose={(each) => set({ from: each })} />
						<CornerPick label="To" corner={to} most={walls} choose={(each) => set({ to: each })} />
					</>
				) : null}
				{kind === "chord" ? (
					<LengthField
						label="Both arms"
						value={places.arm}
						least={1}
						commit={(arm) => {
							set({ arm });
							return null;
						}}
					/>
				) : null}
				{kind === "diagonal" && from === to ? (
					<p className="quiet">A diagonal goes from one corner to another.</p>
				) : (
					<TakeField reading={untaken} />
				)}
			</div>
		</details>
	);
}

interface Places {
	readonly wall: number;
	readonly corner: number;
	readonly from: number;
	readonly to: number;
	readonly arm: number;
}

function untakenReading(kind: Reading["kind"], { wall, corner, from, to, arm }: Places): Untaken {
	switch (kind) {
		case "run":
			return { kind, wall, sd: null };
		case "diagonal":
			return { kind, from, to, sd: null };
		case "angle":
			return { kind, corner, sd: null };
		case "chord":
			return { kind, corner, arm, sd: null };
		case "rise":
			return { kind, wall, at: null, sd: null };
		case "square":
			return { kind, corner, wall, sd: null };
	}
}

interface CornerProps {
	readonly label: string;
	readonly corner: number;
	readonly least?: number;
	readonly most: number;
	readonly choose: (corner: number) => void;
}

function CornerPick({ label, corner, least = 0, most, choose }: CornerProps) {
	const walls = useBay((bay) => bay.walls.length);
	const options = Array.from({ length: most - least + 1 }, (_, i) => {
		const each = least + i;
		return [String(each), capital(cornerName(each, walls))] as const;
	});
	return <Pick label={label} value={String(corner)} options={options} choose={(each) => choose(Number(each))} />;
}
