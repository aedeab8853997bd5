import { BracketsPanel } from "../brackets-panel.tsx";
import { CornersPanel } from "../corners-panel.tsx";
import { EndsPanel } from "../ends-panel.tsx";
import { JointsPanel } from "../joints-panel.tsx";
import { TrackPanel } from "../track-panel.tsx";

/** Which track, and how it is set out. */
export function TrackStage() {
	return (
		<>
			<TrackPanel />
			<CornersPanel />
			<EndsPanel />
			<JointsPanel />
			<BracketsPanel open />
		</>
	);
}
