import { setTrack } from "../desk/changes.ts";
import { desk, useDesk } from "../desk/desk.ts";
import { useBay, usePlan } from "../desk/on-table.ts";
import { Choice } from "../fields/choice.tsx";
import { LengthField } from "../fields/length-field.tsx";
import { Section } from "./section.tsx";
import { SystemButton } from "./system-button.tsx";

/** Which track, what it is fixed to, how wide it bends and which line it takes. */
export function TrackPanel() {
	const bay = useDesk((state) => state.bay);
	const track = useBay((on) => on.track);
	const system = usePlan((plan) => plan.system);
	const { change } = desk.getState();

	return (
		<Section title="Track" gist={system.name}>
			<SystemButton />
			<div className="field-pair">
				<LengthField
					label="Projection"
					value={track.projection}
					instead={system.projection.default}
					commit={(mm) => change("projection", setTrack(bay, "projection", mm))}
					clear={() => change("projection of the system", setTrack(bay, "projection", null))}
				/>
				<LengthField
					label="Preferred radius"
					value={track.radius}
					instead={system.preferredRadius}
					commit={(mm) => change("preferred radius", setTrack(bay, "radius", mm))}
					clear={() => change("preferred radius of the system", setTrack(bay, "radius", null))}
				/>
			</div>
			<Choice
				label="Fixed to"
				value={track.mounting}
				options={MOUNTINGS}
				choose={(mounting) => change(`fix to the ${mounting}`, setTrack(bay, "mounting", mounting))}
			/>
			<Choice
				label="Line"
				value={track.follow}
				options={LINES}
				choose={(follow) => change(FOLLOWING[follow], setTrack(bay, "follow", follow))}
			/>
		</Section>
	);
}

const MOUNTINGS = [
	["wall", "wall"],
	["ceiling", "ceiling"],
] as const;

const LINES = [
	["walls", "along the walls"],
	["smoothest", "smoothest"],
] as const;

const FOLLOWING = { walls: "line along the walls", smoothest: "smoothest line" } as const;
