import { addJoint, moveJoint, removeJoint, setJoints, wallLength } from "@baywright/editor";
import { capital, wallName } from "@baywright/setout";
import { Button } from "react-aria-components";
import { desk } from "../desk/desk.ts";
import { editBay } from "../desk/edit-bay.ts";
import { planOnTable, useBay, usePlan, usePlanPart } from "../desk/on-table.ts";
import { Choice } from "../fields/choice.tsx";
import { Figure } from "../fields/figure.tsx";
import { PlaceFields } from "./place-fields.tsx";
import { Section } from "./section.tsx";
import { removeChosen } from "./stretch-fields.tsx";
import { ThingRow } from "./thing-row.tsx";

/** Where two pieces of the track meet: as the rule places them, nowhere, or where the user says. */
export function JointsPanel() {
	const joints = useBay(({ track }) => (typeof track.joints === "string" ? track.joints : "placed"));
	const walls = useBay((bay) => bay.walls.length);
	const count = usePlan((plan) => plan.joints.length);
	const joinable = usePlan((plan) => plan.system.joint !== null);
	return (
		<Section title="Joints" holds={HOLDS} gist={count === 0 ? "none" : String(count)} open={count > 0}>
			<Choice
				label="Joints"
				value={joints}
				options={joints === "placed" ? [...JOINTS, ["placed", "placed"]] : JOINTS}
				choose={(to) => {
					if (to !== "placed")
						editBay(to === "auto" ? "joints where needed" : "no joints", (bay) => setJoints(bay, to));
				}}
			/>
			<ul className="things">
				{Array.from({ length: count }, (_, index) => (
					// biome-ignore lint/suspicious/noArrayIndexKey: a joint is known by its index
					<JointRow key={index} index={index} />
				))}
			</ul>
			{!joinable ? (
				<p className="quiet">This track cannot be joined.</p>
			) : walls > 0 ? (
				<Button className="button" onPress={addInTheMiddle}>
					Add a joint
				</Button>
			) : null}
		</Section>
	);
}

type JointChoice = "auto" | "none" | "placed";
const JOINTS: readonly (readonly [JointChoice, string])[] = [
	["auto", "where needed"],
	["none", "none"],
];

function JointRow({ index }: { readonly index: number }) {
	const place = usePlanPart(({ joints }) => {
		const joint = joints[index];
		return joint === undefined ? { wall: 0, at: 0 } : { wall: joint.wall, at: joint.at };
	});
	const walls = useBay((bay) => bay.walls.length);
	return (
		<ThingRow
			thing={{ kind: "joint", index }}
			name={`Joint ${index + 1}`}
			sign={index + 1}
			gist={
				<>
					{capital(wallName(place.wall, walls))}
					<span className="thing-figures">
						<Figure of={(state) => planOnTable(state).joints[index]?.at} />
					</span>
				</>
			}
		>
			<PlaceFields
				place={place}
				set={(to) => {
					editBay(`place of joint ${index + 1}`, (bay) => moveJoint(bay, planOnTable(desk.getState()), index, to));
				}}
			/>
			<Button
				className="button"
				onPress={() =>
					removeChosen(`remove joint ${index + 1}`, (bay) => removeJoint(bay, planOnTable(desk.getState()), index))
				}
			>
				Remove joint {index + 1}
			</Button>
		</ThingRow>
	);
}

/** In the middle of the middle wall: from there it is dragged or typed to its place. */
function addInTheMiddle(): void {
	const plan = planOnTable(desk.getState());
	editBay("add a joint", (bay) => {
		const wall = Math.floor((bay.walls.length - 1) / 2);
		return addJoint(bay, plan, { wall, at: Math.round(wallLength(bay, wall) / 2) });
	});
}

const HOLDS = ["joint"] as const;
