import type { BayPlan } from "@baywright/setout";
import { usePlan, usePlanPart } from "../desk/on-table.ts";
import { Section } from "./section.tsx";

/** The parts that the plan can count already, and which it cannot. */
export function PartsPanel() {
	const counts = usePlanPart(countParts);
	const fits = usePlan((plan) => plan.path !== null);
	return (
		<Section title="Parts">
			{fits ? (
				<dl className="tally">
					{counts.map(({ name, count }) => (
						<div key={name}>
							<dt>{name}</dt>
							<dd>{count}</dd>
						</div>
					))}
				</dl>
			) : (
				<p className="quiet">Nothing to count until the track fits.</p>
			)}
			<p className="quiet">
				Not counted yet: gliders, end stops, cord and its tensioner, screws and plugs, fabric and lining.
			</p>
		</Section>
	);
}

function countParts({ brackets, joints, corners, bows }: BayPlan) {
	const atJoints = brackets.filter(({ role }) => role === "joint").length;
	return [
		{ name: "Brackets", count: brackets.length - atJoints },
		{ name: "Joint brackets", count: atJoints },
		{ name: "Joints", count: joints.length },
		{ name: "Bends to make", count: bendsOf(corners) + bows.length },
	];
}

/** Corners that one bend passes share it; a sprung one is not made. */
const bendsOf = (corners: BayPlan["corners"]): number =>
	corners.filter(({ sprung, corner, corners: all }) => !sprung && all[0] === corner).length;
