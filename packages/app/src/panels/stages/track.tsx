import { BracketsPanel } from "../brackets-panel.tsx";
import { CautionsPanel } from "../cautions-panel.tsx";
import { CordPanel } from "../cord-panel.tsx";
import { CornersPanel } from "../corners-panel.tsx";
import { EndsPanel } from "../ends-panel.tsx";
import { FixingsPanel } from "../fixings-panel.tsx";
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
			<FixingsPanel />
			<CordPanel />
			<CautionsPanel />
		</>
	);
}
