import { CurtainsPanel } from "../curtains-panel.tsx";
import { DrawPanel } from "../draw-panel.tsx";
import { GlassPanel } from "../glass-panel.tsx";
import { LoadsPanel } from "../loads-panel.tsx";

/** What hangs on the track. */
export function CurtainsStage() {
	return (
		<>
			<DrawPanel />
			<GlassPanel />
			<CurtainsPanel />
			<LoadsPanel />
		</>
	);
}
